#!/bin/sh
# How late a key is stamped: sends keys through a pseudo-terminal at known moments and holds the stamps against them.
# Usage, after mvn -q -B test-compile: sh docs/measure-keys.sh [CLASSPATH]   (python3 and Linux: both clocks are CLOCK_MONOTONIC)
cd "$(dirname "$0")/.." || exit 1
classes=${1:-target/test-classes:target/classes}
exec python3 - "$classes" <<'PYTHON'
import os, pty, random, sys, time, tty

def run():
    child, master = pty.fork()
    if child == 0:
        os.execvp("java", ["java", "-XX:+UseSerialGC", "-cp", sys.argv[1], "closehand.screen.terminal.KeyTimes"])
    tty.setraw(master)
    seen = b""
    while b"ready" not in seen:
        seen += os.read(master, 4096)
    time.sleep(0.5)
    sent, draw = [], random.Random(1)
    for i in range(320):
        time.sleep(0.08 + 0.06 * draw.random())
        sent.append(time.clock_gettime(time.CLOCK_MONOTONIC) * 1000)
        os.write(master, b"a")
    os.write(master, b"q")
    seen = b""
    while b"end" not in seen:
        seen += os.read(master, 65536)
    os.waitpid(child, 0)
    return sent, [int(s) for s in seen.split(b"end")[0].split()]

def at(values, share):
    return sorted(values)[min(len(values) - 1, int(share * len(values)))]

sent, stamps = run()
sent, stamps = sent[20:], stamps[20:]
late = [s - t for s, t in zip(stamps, sent)]
gaps = [abs((stamps[i] - stamps[i - 1]) - (sent[i] - sent[i - 1])) for i in range(1, len(sent))]
# A stamp is a whole millisecond, cut off: it can read up to one too early.
print("keys %d, load %s" % (len(sent), open("/proc/loadavg").read().split()[0]))
print("stamped late, ms: median %.2f, 95 of 100 within %.2f, most %.2f" % (at(late, .5), at(late, .95), max(late)))
print("error of a time between two keys, ms: median %.2f, 95 of 100 within %.2f, most %.2f" % (at(gaps, .5), at(gaps, .95), max(gaps)))
PYTHON
