#!/bin/sh
# Times the comparison of two set-ups with ten trials each, all four measures counted exactly, in five runs of Java.
# After "mvn -q -B test-compile", from the top folder: sh docs/measure-compare.sh
set -eu
for run in 1 2 3 4 5; do
  java -cp "target/test-classes:target/classes:$(find "$HOME/.m2" -name "jackson-core-2*.jar" | head -n 1)" closehand.measure.trial.ComparisonTiming
done
