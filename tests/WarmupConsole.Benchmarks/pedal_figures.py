#!/usr/bin/env python3
"""Measures how long a pedal takes to its first byte at the piano, and prints a Markdown row for docs/performance.md.

    pedal_figures.py FOLDER [PRESSES]     FOLDER holds a published `warmup`; PRESSES (100) of each kind

Two pipes with names stand for a piano's input and output, which the console takes for devices. Times are of the monotonic clock: from
the write of the pedal's bytes to the first byte that can be read behind the port.
"""
import os
import select
import sys
import tempfile
import time

from figures import RIGHT, STEPS_BEFORE_SUNG, Console, row

LEFT = b"\x1b[D"
GO_ON, AGAIN = 64, 67
REST = 0.35  # longer than the pause between two presses that count


def wait_for_bytes(console, pipe, seconds):
    """When the next bytes came, and what they are; the terminal is read meanwhile so that it never fills."""
    end = time.monotonic() + seconds
    while (left := end - time.monotonic()) > 0:
        ready = select.select([pipe, console.master], [], [], left)[0]
        if pipe in ready:
            at = time.monotonic_ns()
            return at, os.read(pipe, 4096)
        if console.master in ready:
            console.read(0)
    return None, b""


def settle(console, pipe, seconds):
    """Reads what comes and is not measured."""
    end = time.monotonic() + seconds
    while (left := end - time.monotonic()) > 0:
        wait_for_bytes(console, pipe, left)


def press(console, pipe, piano, controller):
    """Nanoseconds from the pedal to the first byte; then the pedal is let go."""
    settle(console, pipe, REST)
    while select.select([pipe], [], [], 0)[0]:
        os.read(pipe, 4096)
    begun = time.monotonic_ns()
    os.write(piano, bytes((0xB0, controller, 127)))
    at, _ = wait_for_bytes(console, pipe, 2)
    settle(console, pipe, REST)
    os.write(piano, bytes((0xB0, controller, 0)))
    if at is None:
        sys.exit(f"pedal {controller} was not answered")
    return at - begun


def main():
    folder, presses = sys.argv[1], int(sys.argv[2]) if len(sys.argv) > 2 else 100
    home = tempfile.mkdtemp(prefix="warmup-pedal-")
    into, out = os.path.join(home, "in"), os.path.join(home, "out")
    os.mkfifo(into)
    os.mkfifo(out)
    os.makedirs(os.path.join(home, "warmup-console"))
    with open(os.path.join(home, "warmup-console", "settings.yaml"), "w", encoding="utf-8") as settings:
        settings.write(f"format: 1\ninput: {into}\npedals: {{go-on: sustain, again: soft}}\n")
    pipe = os.open(out, os.O_RDONLY | os.O_NONBLOCK)
    piano = os.open(into, os.O_RDWR | os.O_NONBLOCK)
    console = Console(folder, port=out, before=("env", f"XDG_CONFIG_HOME={home}"))
    settle(console, pipe, 2)
    for key in (b" ", *[RIGHT] * STEPS_BEFORE_SUNG):
        os.write(console.master, key)
        settle(console, pipe, 0.3)
    found = {"pedal to first byte: go on, the cue chord": [], "pedal to first byte: again, the silence before the chord": []}
    goes_on, again = found.values()
    for _ in range(presses):
        goes_on.append(press(console, pipe, piano, GO_ON))
        again.append(press(console, pipe, piano, AGAIN))
        for key in (LEFT, RIGHT):
            os.write(console.master, key)
            settle(console, pipe, 0.2)
    for name, waits in found.items():
        row(name, waits)
    os.write(console.master, b"\x11\x11")
    settle(console, pipe, 1)
    console.process.terminate()


if __name__ == "__main__":
    main()
