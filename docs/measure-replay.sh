#!/bin/sh
# Measures "replay" over 10,000 cases against two banks, as docs/performance.md states. Run it on a quiet machine after
# "mvn -q -B -DskipTests package", from the top folder. Prints wall time, processor time and the largest resident memory for 1,000 and for 10,000 cases.
set -eu
jar=target/closehand.jar
work=$(mktemp -d); trap 'rm -rf "$work"' EXIT
mkdir "$work/cases"
i=0
while [ $i -lt 2500 ]; do
  for who in quiet-heron amber-otter paper-boat silver-birch; do
    cp "examples/$who/answers.json" "$work/cases/$i-$who.json"
  done
  i=$((i + 1))
done
mkdir "$work/few"; for f in $(ls "$work/cases" | head -1000); do ln "$work/cases/$f" "$work/few/$f"; done
for set in few cases; do
  a=$(date +%s%N)
  java -Xmx64m -jar "$jar" replay "$work/$set" --bank question-banks/core >"$work/out" 2>/dev/null & pid=$!
  peak=0; ticks=0
  while kill -0 $pid 2>/dev/null; do
    now=$(sed -n 's/^VmRSS:[^0-9]*\([0-9]*\) kB/\1/p' /proc/$pid/status 2>/dev/null || echo 0)
    if [ "${now:-0}" -gt $peak ]; then peak=$now; fi
    ticks=$(awk '{ print $14 + $15 }' /proc/$pid/stat 2>/dev/null || echo "$ticks")
    sleep 0.1
  done
  wait $pid
  b=$(date +%s%N)
  echo "$set: $(( (b - a) / 1000000 )) ms, $(( ${ticks:-0} * 10 )) ms on all processors, at most $(( peak / 1024 )) MB resident, heap limited to 64 MB"; sed -n 's/^cases compared */cases compared: /p' "$work/out"
done
