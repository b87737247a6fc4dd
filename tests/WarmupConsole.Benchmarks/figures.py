#!/usr/bin/env python3
"""Measures published programs from outside, in a pseudo-terminal, and prints Markdown rows for docs/performance.md.

    figures.py NAME=FOLDER...       each FOLDER holds a published `warmup`; the first one is measured in full

Times are of the monotonic clock, which the console's trace (`run --trace`) uses too. Only Python's own library is needed.
"""
import fcntl
import glob
import json
import os
import pty
import re
import select
import shutil
import signal
import struct
import subprocess
import sys
import tempfile
import termios
import time

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
PLAN = os.environ.get("WARMUP_PLAN") or os.path.join(ROOT, "plans-demo", "plans", "2027-02-09.yaml")
STEPS_BEFORE_SUNG = 3
STARTS, KEYS, SILENCES = 10, 200, 200
QUIET = 0.05  # seconds without output after which nothing more is on its way
CARD = b"Heard"  # on the first screen, once the session logs are read
PICTURE = 0.005  # seconds without output that end one picture: it is written at once
TAB, RIGHT, LEAVE, BACKSPACE = b"\t", b"\x1b[C", b"\x11", b"\x7f"
NANO = 1_000_000_000


class Console:
    """The program in a pseudo-terminal of a size, with settings and logs of its own."""

    def __init__(self, folder, columns=120, rows=36, port="none", before=(), settings=""):
        self.home = tempfile.mkdtemp(prefix="warmup-figures-")
        if settings:
            os.makedirs(os.path.join(self.home, "warmup-console"))
            with open(os.path.join(self.home, "warmup-console", "settings.yaml"), "w", encoding="utf-8") as file:
                file.write(settings)
        self.trace = os.path.join(self.home, "trace")
        self.size = (columns, rows)
        self.output = bytearray()  # grows without being copied: that took as long as what is measured
        self.master, slave = pty.openpty()
        fcntl.ioctl(slave, termios.TIOCSWINSZ, struct.pack("HHHH", rows, columns, 0, 0))
        environment = dict(os.environ, XDG_CONFIG_HOME=self.home, TERM="xterm-256color", COLORTERM="truecolor",
                           CI="true")  # else the first-run tour takes the keys
        command = [*before, os.path.join(folder, "warmup"), "run", PLAN, "--anew", "--port", port, "--trace", self.trace]
        self.started = time.monotonic_ns()
        self.process = subprocess.Popen(command, stdin=slave, stdout=slave, stderr=slave, env=environment, start_new_session=True,
                                        preexec_fn=lambda: fcntl.ioctl(0, termios.TIOCSCTTY, 0))
        os.close(slave)

    def read(self, seconds):
        """What was printed next and when it came; nothing when it took longer than the seconds."""
        if not select.select([self.master], [], [], max(0, seconds))[0]:
            return b"", time.monotonic_ns()
        try:
            data = os.read(self.master, 65536)
        except OSError:
            return b"", time.monotonic_ns()
        at = time.monotonic_ns()
        self.output += data
        self.answer(data)
        return data, at

    def answer(self, data):
        """What a terminal says when it is asked who it is, where its cursor stands and how large it is."""
        for question, reply in ((rb"\x1b\[0?c", b"\x1b[?62;22c"), (rb"\x1b\[6n", b"\x1b[1;1R"),
                                (rb"\x1b\[18t", b"\x1b[8;%d;%dt" % (self.size[1], self.size[0]))):
            for _ in re.findall(question, data):
                os.write(self.master, reply)

    def until(self, text, seconds=30, quiet=QUIET):
        """The nanosecond at which the picture with this text was complete."""
        before, end = len(self.output), time.monotonic() + seconds
        while text not in self.output[before:]:
            if time.monotonic() > end:
                sys.exit(f"{text!r} did not appear; last output: {self.output[-400:]!r}")
            _, last = self.read(0.5)
        return self.settled(last, quiet)

    def settled(self, last, quiet=QUIET):
        """When something was shown last, before nothing was for a while; last is when that happened so far."""
        while time.monotonic_ns() - last < quiet * NANO:
            data, at = self.read(quiet)
            last = at if shows(data) else last
        return last

    def drain(self, seconds):
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            self.read(end - time.monotonic())

    def press(self, keys):
        at = time.monotonic_ns()
        os.write(self.master, keys)
        return at

    def sing(self):
        """From the first picture into the first sung step."""
        for keys in [b" "] + [RIGHT] * STEPS_BEFORE_SUNG + [b" "]:
            self.press(keys)
            self.drain(0.3)

    def processes(self):
        """The console and its player, which is started once the first picture stands."""
        for task in glob.glob(f"/proc/{self.process.pid}/task/*/children"):
            for child in open(task, encoding="ascii").read().split():
                with open(f"/proc/{child}/cmdline", "rb") as words:
                    if b"player" in words.read().split(b"\0"):
                        return {"console": self.process.pid, "player": int(child)}
        sys.exit("no player was started")

    def leave(self):
        """Ends it and returns what it says about its notes."""
        for _ in range(2):
            self.press(LEAVE)
            self.drain(0.5)
        end = time.monotonic() + 10
        while self.process.poll() is None and time.monotonic() < end:
            self.read(0.1)
        self.drain(0.2)
        if self.process.poll() is None:
            self.process.send_signal(signal.SIGKILL)
            sys.exit("it did not end when asked to")
        os.close(self.master)
        return self.output.decode("utf-8", "replace")

    def sent(self):
        with open(self.trace, encoding="ascii") as file:
            return [(int(at), bytes.fromhex(message)) for at, message in map(str.split, file)]

    def logged(self):
        path = glob.glob(f"{self.home}/warmup-console/demo/plans-demo/sessions/*.jsonl")[0]
        with open(path, encoding="utf-8") as file:
            return [json.loads(line) for line in file if line.strip()]

    def forget(self):
        shutil.rmtree(self.home, ignore_errors=True)


def shows(data):
    """Whether something was painted: the library also hides the cursor at every turn of its loop."""
    return bool(re.sub(rb"\x1b\[[0-9;?]*[A-Za-z]?", b"", data))


def row(name, values, unit=1e6):
    """Number, median, 95 %, 99 % and worst, in milliseconds."""
    values = sorted(values)
    picked = [values[min(len(values) - 1, len(values) * part // 100)] for part in (50, 95, 99)] + [values[-1]]
    print(f"| {name} | {len(values)} | " + " | ".join(f"{value / unit:.2f}" for value in picked) + " |", flush=True)


def usage(pids, console, seconds):
    """Percent of one core and resident megabytes of each process over some seconds."""
    def ticks(pid):
        with open(f"/proc/{pid}/stat", encoding="ascii") as file:
            fields = file.read().rsplit(")", 1)[1].split()
        return int(fields[11]) + int(fields[12])

    def resident(pid):
        with open(f"/proc/{pid}/status", encoding="ascii") as file:
            return int(re.search(r"VmRSS:\s+(\d+)", file.read())[1]) / 1024

    before, begin = {name: ticks(pid) for name, pid in pids.items()}, time.monotonic()
    console.drain(seconds)
    passed = (time.monotonic() - begin) * os.sysconf("SC_CLK_TCK")
    return {name: (100 * (ticks(pid) - before[name]) / passed, resident(pid)) for name, pid in pids.items()}


def measure_starts(name, folder):
    first, whole = [], []
    for _ in range(STARTS):
        console = Console(folder)
        at = console.until(b"Lantern", quiet=PICTURE)
        first.append(at - console.started)
        whole.append((console.settled(at) if CARD in console.output else console.until(CARD)) - console.started)
        console.leave()
        console.forget()
    row(f"start to first picture, {name}", first)
    row(f"and with what the last weeks showed, {name}", whole)


def measure_cost(name, folder, columns, rows):
    console = Console(folder, columns, rows)
    console.until(b"Lantern")
    console.drain(1)
    pids = console.processes()
    idle = usage(pids, console, 8)
    console.sing()
    playing = usage(pids, console, 20)
    said = console.leave()
    for process in pids:
        print(f"| {name}, {columns}x{rows}, {process} | {idle[process][0]:.1f} % | {playing[process][0]:.1f} % | {playing[process][1]:.0f} MB |", flush=True)
    errors = onset_errors(console)
    console.forget()
    return errors, said


def onset_errors(console):
    """Sending time against due time: the log's timeline gives the moment of every whole beat, and this step has no others."""
    # From the first rung on; the chord before it answers a key press and has no time of its own.
    timelines = [record for record in console.logged() if record["type"] == "timeline-changed"]
    last = timelines[-1]
    beat = 60 * NANO * 1000 / last["milliBpm"]
    origin = last["nanoseconds"] - last["beatTicks"] / 960 * beat
    onsets = [at for at, message in console.sent() if message[0] & 0xF0 == 0x90 and at > origin - beat / 2]
    return [at - (origin + round((at - origin) / beat) * beat) for at in onsets]


def measure_keys(name, folder):
    console = Console(folder)
    console.until(b"Lantern")
    console.sing()
    console.drain(3)
    console.press(b"z")
    console.drain(0.5)
    times = []
    for _ in range(KEYS):
        pressed, data, at = console.press(b"z"), b"", 0
        while b"z" not in data:
            data, at = console.read(5)
            if not data:
                sys.exit("a key was never painted")
        times.append(at - pressed)
        console.drain(0.06)
        console.press(BACKSPACE)
        console.drain(0.08 + 0.0007 * len(times) % 0.03)  # not in step with the screen's own rhythm
    console.press(BACKSPACE)
    console.leave()
    row(f"key to painted screen, {name}", times)
    errors = onset_errors(console)
    console.forget()
    return errors


def measure_silence(name, folder):
    console = Console(folder)
    console.until(b"Lantern")
    console.sing()
    presses = []
    for number in range(SILENCES):
        console.drain(0.45 + 0.013 * (number % 7))
        presses.append(console.press(TAB))
        console.drain(0.15)
        console.press(b" ")
    console.drain(0.3)
    console.leave()
    sent = console.sent()
    asked = [record["mono"] for record in console.logged() if record["type"] == "hold-changed" and record["hold"] == "silenced"]
    note_offs, ends, answers = [], [], []
    for pressed in presses:
        after = [(at, message) for at, message in sent if at >= pressed]
        end = next(i for i, (_, message) in enumerate(after) if message[0] & 0xF0 == 0xB0 and message[1] == 120)
        offs = [at for at, message in after[:end] if message[0] & 0xF0 == 0x80]
        note_offs += [offs[-1] - pressed] if offs else []
        ends.append(after[end][0] - pressed)
        answers.append(after[end][0] - next(at for at in asked if at >= pressed))
    row(f"silence key to last note-off, {name}", note_offs)
    row(f"silence key to end of the silence, {name}", ends)
    row(f"silence asked of the player to its end, {name}", answers)
    console.forget()


def main(named):
    programs = [entry.split("=", 1) for entry in named]
    print(f"Load when this began: {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores\n")
    print("| milliseconds | number | median | 95 % | 99 % | worst |\n|---|---|---|---|---|---|")
    for name, folder in programs:
        measure_starts(name, folder)
    errors = measure_keys(*programs[0])
    measure_silence(*programs[0])
    row("onset error, keys typed meanwhile", errors)
    print("\n| cost | first screen | playing | memory |\n|---|---|---|---|")
    errors, said = measure_cost(*programs[0], 120, 36)
    measure_cost(*programs[0], 80, 24)
    for program in programs[1:2]:
        measure_cost(*program, 120, 36)
    print("\n| milliseconds | number | median | 95 % | 99 % | worst |\n|---|---|---|---|---|---|")
    row("onset error, undisturbed", errors)
    print("\nThe player's own count:", "; ".join(re.findall(r"\d+ notes played[^\r\n]*", said)) or "none")
    for name, folder in programs:
        files = [os.path.join(at, file) for at, _, names in os.walk(folder) for file in names if not file.endswith((".pdb", ".dbg", ".xml"))]
        print(f"Size of {name}: {sum(map(os.path.getsize, files)) / 1e6:.1f} MB in {len(files)} files")
    print(f"\nLoad when this ended: {os.getloadavg()[0]:.1f}")


if __name__ == "__main__":
    if len(sys.argv) < 2:
        sys.exit(__doc__)
    main(sys.argv[1:])
