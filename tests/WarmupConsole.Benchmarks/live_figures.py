#!/usr/bin/env python3
"""Measures what a choir would notice, on a machine that is loaded on purpose, and prints Markdown rows for docs/performance.md.

    live_figures.py FOLDER SECONDS [KILLS]     FOLDER holds a published `warmup`; SECONDS for each of the two long runs; KILLS (200) ends by force

Sound goes to a pipe with a name, which the console takes for a device, or nowhere; times are of the monotonic clock. cyclictest (Debian:
rt-tests) runs beside the loaded run when it is there.
"""
import fcntl
import os
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

from figures import NANO, Console, row

PARTS_OF_A_BEAT = 12  # patterns have halves, thirds and quarters of beats
LOSSES = 20
MOST_MICROSECONDS = 20_000  # of cyclictest's table
WITHOUT_RIGHTS = ("setpriv", "--bounding-set=-sys_nice", "--inh-caps=-sys_nice")


def onset_errors(console):
    return [error for _, error in onsets(console)]


def onsets(console):
    """Sending time of every note-on, and how late that is: the log's timeline in force gives the moment of every part of a beat.

    The first chord of a lead-in answers a key press and has no time of its own.
    """
    timelines = [(r["nanoseconds"], r["beatTicks"], 60 * NANO * 1000 / r["milliBpm"]) for r in console.logged() if r["type"] == "timeline-changed"]
    found, index = [], 0
    for at, message in console.sent():
        while index + 1 < len(timelines) and timelines[index + 1][0] <= at:
            index += 1
        origin, ticks, beat = timelines[index]
        if message[0] & 0xF0 == 0x90 and not (ticks < 0 and at - origin < beat / 2):
            part = beat / PARTS_OF_A_BEAT
            begin = origin - ticks / 960 * beat
            found.append((at, at - (begin + round((at - begin) / part) * part)))
    return found


def lead(console, seconds, redraw):
    """Sings through the plan, and begins it again where it has ended; with redraw the whole screen is painted ten times a second."""
    end, turn = time.monotonic() + seconds, 0
    while time.monotonic() < end:
        console.drain(0.1)
        turn += 1
        if redraw:
            fcntl.ioctl(console.master, termios.TIOCSWINSZ, struct.pack("HHHH", 36, 120 - turn % 2, 0, 0))
        if turn % 30 == 0:
            console.press(b" ")  # ends a talk; while music runs it is refused
        if turn % 400 == 0:
            console.press(b"\x1b[A")  # the same key again: a plan of a quarter of an hour lasts


def percentiles(name, errors):
    errors = sorted(errors)
    picked = [errors[min(len(errors) - 1, int(len(errors) * part))] for part in (0.5, 0.99, 0.999)] + [errors[-1]]
    print(f"| {name} | {len(errors)} | " + " | ".join(f"{error / 1000:.0f}" for error in picked) + " |", flush=True)


def reached(counts, wanted):
    """The microsecond by which so many wakes had come."""
    for late, count in counts:
        wanted -= count
        if wanted <= 0:
            return late
    return f"over {MOST_MICROSECONDS}"


def measure_onsets(name, folder, seconds, loaded, before=()):
    beside, console, said = [], None, ""
    if loaded:
        beside = [subprocess.Popen([sys.executable, "-c", "while True: pass"]) for _ in range(os.cpu_count())]
    cyclic = subprocess.Popen(["cyclictest", "-q", "-m", "-t1", "-p80", "-i1000", f"-h{MOST_MICROSECONDS}", f"-D{int(seconds)}"], stdout=subprocess.PIPE, text=True) \
        if loaded and shutil.which("cyclictest") else None
    try:
        console = Console(folder, before=before)
        console.until(b"Lantern")
        console.sing()
        lead(console, seconds, redraw=loaded)
        said = console.leave()
    finally:
        for process in beside:
            process.kill()
            process.wait()
    percentiles(name, onset_errors(console))
    console.forget()
    dropped = re.findall(r"\d+ notes played[^\r\n]*", said)
    print(f"| (the player's own count: {'; '.join(dropped) or 'none'}) | | | | | |")
    if cyclic:
        said = cyclic.communicate()[0]
        counts = [(int(late), int(count)) for late, count in re.findall(r"^(\d{6}) (\d+)$", said, re.MULTILINE)]
        worst = re.search(r"# Max Latencies: (\d+)", said)
        total = sum(count for _, count in counts) + int(re.search(r"# Histogram Overflows: (\d+)", said)[1])
        print(f"| cyclictest, SCHED_FIFO 80, in the same run | {total} | "
              + " | ".join(str(reached(counts, total * part)) for part in (0.5, 0.99, 0.999)) + f" | {int(worst[1])} |", flush=True)
    elif loaded:
        print("| cyclictest is not installed (Debian: rt-tests) | | | | | |")


class Device:
    """A pipe with a name and a reader behind it."""

    def __init__(self):
        self.folder = tempfile.mkdtemp(prefix="warmup-device-")
        self.path = os.path.join(self.folder, "midiC7D0")
        # A device is heard as well as played on; of a pipe with one end the listener would take what is to be measured.
        self.settings = f"format: 1\ninput: {os.path.join(self.folder, 'keys')}\n"
        os.mkfifo(os.path.join(self.folder, "keys"))
        self.plug_in()

    def plug_in(self):
        os.mkfifo(self.path)
        self.reader = os.open(self.path, os.O_RDONLY | os.O_NONBLOCK)

    def unplug(self):
        os.close(self.reader)
        os.unlink(self.path)
        return time.monotonic_ns()

    def until(self, tail, seconds):
        """When the bytes that were read ended like this, or None."""
        data, end = b"", time.monotonic() + seconds
        while time.monotonic() < end:
            if select.select([self.reader], [], [], 0.05)[0]:
                try:
                    read = os.read(self.reader, 65536)
                except BlockingIOError:  # the writer opened it and wrote nothing yet
                    continue
                at = time.monotonic_ns()
                if not read:
                    return None
                data += read
                if tail(data):
                    return at
        return None

    def forget(self):
        shutil.rmtree(self.folder, ignore_errors=True)


def sounds(data):
    """Whether the newest note message begins one."""
    notes = re.findall(rb"[\x80\x90][\x00-\x7f][\x00-\x7f]", data)
    return bool(notes) and notes[-1][0] == 0x90


def silent(data):
    return data.endswith(b"\xb0\x78\x00")


def measure_kills(folder, kills):
    times, hanging = [], 0
    for _ in range(kills):
        device = Device()
        console = Console(folder, port=device.path, settings=device.settings)
        console.until(b"Lantern")
        console.sing()
        if not device.until(sounds, 30):
            sys.exit("no note came")
        pressed = time.monotonic_ns()
        os.kill(console.process.pid, signal.SIGKILL)
        at = device.until(silent, 5)
        hanging += at is None
        times += [at - pressed] if at else []
        console.process.wait()
        os.close(console.master)
        console.forget()
        device.forget()
    row(f"kill -9 to the last byte of the silence at a receiver ({kills - hanging} of {kills} fell silent)", times)


def holds(console):
    return [record for record in console.logged() if record["type"] == "hold-changed"]


def measure_losses(folder):
    device, times = Device(), []
    console = Console(folder, port=device.path, settings=device.settings)
    console.until(b"Lantern")
    console.sing()
    for number in range(LOSSES):
        console.drain(1.5 + 0.037 * number)  # not in step with the looks
        held, gone = len(holds(console)), device.unplug()
        end = time.monotonic() + 10
        while len(holds(console)) == held and time.monotonic() < end:
            console.drain(0.02)
        times.append(int(holds(console)[held]["mono"]) - gone)
        device.plug_in()
        console.drain(1.5)
        console.press(b" ")
    console.leave()
    row("device gone to the music held", times)
    console.forget()
    device.forget()


def main(folder, seconds, kills=200):
    print(f"Load when this began: {os.getloadavg()[0]:.1f} on {os.cpu_count()} cores\n")
    print("| microseconds after the due time | number | median | 99 % | 99.9 % | worst |\n|---|---|---|---|---|---|")
    measure_onsets("onset error, screen redrawn ten times a second, every core busy", folder, seconds, loaded=True)
    if shutil.which("setpriv") and os.getuid() == 0:
        measure_onsets("onset error, without real-time rights, otherwise idle", folder, seconds, loaded=False, before=WITHOUT_RIGHTS)
    else:
        measure_onsets("onset error, with this user's rights, otherwise idle", folder, seconds, loaded=False)
    print("\n| milliseconds | number | median | 95 % | 99 % | worst |\n|---|---|---|---|---|---|")
    measure_losses(folder)
    measure_kills(folder, kills)
    print(f"\nLoad when this ended: {os.getloadavg()[0]:.1f}")


if __name__ == "__main__":
    if len(sys.argv) < 3:
        sys.exit(__doc__)
    main(sys.argv[1], float(sys.argv[2]), *map(int, sys.argv[3:]))
