#!/bin/sh
# Measures what docs/performance.md states of the full screen, in a pseudo-terminal of 80x24. Needs python3, Linux, and
# "mvn -q -B -DskipTests package" before. Usage, from the top folder: sh docs/measure-screen.sh [FOLDER]   (target)
# Times are of the wall clock. Each run of the program has a run of a program beside it that only says hello, so that a
# busy machine slows both; the smallest of the runs counts. Keys come in rounds of a hundred; every round is printed.
set -eu
folder=${1:-target}
work=$(mktemp -d); trap 'rm -rf "$work"' EXIT
printf 'public class Hello { public static void main(String[] a) { System.out.println("hello"); } }\n' > "$work/Hello.java"
javac -d "$work" "$work/Hello.java"
"$folder/closehand" --version >/dev/null
exec python3 - "$folder" "$work" <<'PYTHON'
import fcntl, os, pty, select, signal, struct, subprocess, sys, termios, time

folder, work = sys.argv[1], sys.argv[2]
java = os.path.join(os.environ["JAVA_HOME"], "bin", "java") if os.environ.get("JAVA_HOME") else "java"
serial = ["-XX:+UseSerialGC", "-XX:-UsePerfData"]
jar = os.path.join(folder, "closehand.jar")
environment = dict(os.environ, TERM="xterm-256color", LANG="C.UTF-8", XDG_CONFIG_HOME=work + "/config",
                   XDG_DATA_HOME=work + "/data", CLOSEHAND_LINE="no")
os.makedirs(work + "/config/closehand")
with open(work + "/config/closehand/screen.settings", "w") as settings:
    settings.write("hold-milliseconds = 0\nbounce-milliseconds = 0\n")

def start(command):
    pid, terminal = pty.fork()
    if pid == 0:
        fcntl.ioctl(0, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))
        os.execvpe(command[0], command, environment)
    return pid, terminal

def read_until(terminal, wanted, seconds=60):
    seen, end = b"", time.monotonic() + seconds
    while wanted not in seen:
        if not select.select([terminal], [], [], max(0, end - time.monotonic()))[0]:
            raise SystemExit("not seen: %r in %r" % (wanted, seen[-2000:]))
        seen += os.read(terminal, 65536)
    return seen

def rest(terminal, quiet=0.05):  # what comes until nothing comes; when the last of it came
    last, seen = time.perf_counter(), b""
    while select.select([terminal], [], [], quiet)[0]:
        seen += os.read(terminal, 65536)
        last = time.perf_counter()
    return last, seen

def end(pid, terminal):
    os.kill(pid, signal.SIGTERM)
    try:
        while os.read(terminal, 65536):
            pass
    except OSError:
        pass
    os.waitpid(pid, 0)
    os.close(terminal)

def first_paint(command):
    before = time.perf_counter()
    pid, terminal = start(command)
    read_until(terminal, b"\x1b[7mtake")
    taken = time.perf_counter() - before
    end(pid, terminal)
    return 1000 * taken

def hello():
    before = time.perf_counter()
    subprocess.run([java] + serial + ["-cp", work, "Hello"], stdout=subprocess.DEVNULL, check=True)
    return 1000 * (time.perf_counter() - before)

def java_of(pid):  # the launcher is a shell; Java is its child
    children = open("/proc/%d/task/%d/children" % (pid, pid)).read().split()
    names = {int(c): open("/proc/%s/comm" % c).read().strip() for c in children}
    return next((c for c in names if names[c] == "java"), pid)

def memory(pid, field):
    return next(int(l.split()[1]) / 1024 for l in open("/proc/%d/status" % pid) if l.startswith(field + ":"))

def cpu(pid):
    return sum(int(n) for n in open("/proc/%d/stat" % pid).read().rsplit(")", 1)[1].split()[11:13]) * 10

kinds = {"java -jar": [java] + serial + ["-jar", jar], "launcher, with its archive": [folder + "/closehand"]}
print("First whole screen, milliseconds (hello of the same runs beside it), eleven runs each")
for name, command in kinds.items():
    hellos, paints = [], []
    for run in range(11):
        hellos.append(hello())
        paints.append(first_paint(command))
    print("  %-28s smallest %4.0f (hello %3.0f, %.1f times)   middle %4.0f (hello %3.0f)"
          % (name, min(paints), min(hellos), min(paints) / min(hellos), sorted(paints)[5], sorted(hellos)[5]))

for name, command in kinds.items():
    pid, terminal = start(command)
    read_until(terminal, b"\x1b[7mtake"); rest(terminal, 0.5)
    for key in b"1", b"4", b"2", b"3", b"0":
        os.write(terminal, key); rest(terminal, 0.5)
    process = java_of(pid)
    print(name + ": key to repaint, milliseconds")
    for what, keys in (("moving", (b"\x1b[B", b"\x1b[A")), ("answering and taking back", (b"2", b"u"))):
        for key in keys * 10:
            os.write(terminal, key); rest(terminal)
        for round in range(4):
            times = []
            for key in keys * 50:
                before = time.perf_counter()
                os.write(terminal, key)
                last, seen = rest(terminal)
                if seen:
                    times.append(1000 * (last - before))
            times.sort()
            print("  %-26s middle %5.1f   95 of 100 within %5.1f   (%d keys)"
                  % (what, times[len(times) // 2], times[int(len(times) * 0.95)], len(times)))
    rest(terminal, 3)
    quiet = []
    for second in range(8):
        before = cpu(process)
        last, seen = rest(terminal, 1)
        quiet.append("%d ms, %d bytes" % (cpu(process) - before, len(seen)))
    print("  idle, second by second: " + "; ".join(quiet))
    print("  memory: %.0f MB resident, %.0f MB at most" % (memory(process, "VmRSS"), memory(process, "VmHWM")))
    end(pid, terminal)
PYTHON
