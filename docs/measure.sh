#!/bin/sh
# Measures what docs/performance.md states. Run it on a quiet machine after "mvn -q -B -DskipTests package", from the top folder.
# Prints wall times in milliseconds, the smallest of eleven runs, beside a program that only says hello on the same Java.
set -eu
jar=target/closehand.jar
work=$(mktemp -d); trap 'rm -rf "$work"' EXIT
printf 'public class Hello { public static void main(String[] a) { System.out.println("hello"); } }\n' > "$work/Hello.java"
javac -d "$work" "$work/Hello.java"
fast="-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -XX:-UsePerfData"
best() { # smallest wall time of eleven runs of "$@"
  least=999999
  for i in 1 2 3 4 5 6 7 8 9 10 11; do
    a=$(date +%s%N); "$@" >/dev/null 2>&1 </dev/null || true; b=$(date +%s%N)
    t=$(( (b - a) / 1000000 )); [ $t -lt $least ] && least=$t
  done
  echo $least
}
first_prompt() { # until the first prompt is out: the program then reads the end of its input and leaves
  sh -c "sleep 5 | $* 2>/dev/null | head -c 400 >/dev/null"
}
target/closehand --version >/dev/null
hello=$(best java $fast -cp "$work" Hello)
echo "hello                      $hello ms"
t=$(best target/closehand advise --answers examples/quiet-heron/answers.json)
echo "advise, launcher           $t ms  $(( t * 10 / hello ))/10 of hello"
t=$(best java -jar "$jar" advise --answers examples/quiet-heron/answers.json)
echo "advise, java -jar          $t ms"
t=$(best target/closehand check)
echo "check, launcher            $t ms"
