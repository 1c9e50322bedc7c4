#!/bin/sh
# Measures the control plan against a general solver on the instances in src/test/resources/plan-instances, in one run of Java.
# After "mvn -q -B test-compile", from the top folder: sh docs/measure-plan.sh race | tight
set -eu
list=$(mktemp); trap 'rm -f "$list"' EXIT
mvn -q -B -o dependency:build-classpath -DincludeScope=test -Dmdep.outputFile="$list" >/dev/null
java -cp "target/test-classes:target/classes:$(cat "$list")" closehand.plan.solve.PlanRace "${1:-race}"
