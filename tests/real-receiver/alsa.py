#!/usr/bin/env python3
"""Inside the emulated machine of alsa.sh: the console plays to virtual MIDI cards over ALSA, and what a card's raw device hands on is read.

    alsa.py FOLDER       FOLDER holds a published `warmup`
"""
import os
import re
import select
import subprocess
import sys
import time

from figures import Console

DRIVER = "/sys/bus/platform/drivers/snd_virmidi"
DEVICE = "snd_virmidi.0"
CARD = "VirMIDI"
SCALE = [60, 62, 64, 65, 67, 69, 71, 72, 60, 64, 67, 72]
PATIENCE = 60  # seconds; an emulated machine is slow
failures = 0


def check(words, ok, said=""):
    global failures
    failures += not ok
    print(f"{'ok' if ok else 'not ok'} - {words}{': ' + said if said else ''}", flush=True)


class RawDevice:
    """What the first raw device of the card hands on."""

    def __init__(self):
        name = next(name for name in sorted(os.listdir("/dev/snd")) if name.startswith("midi"))
        self.file = os.open(f"/dev/snd/{name}", os.O_RDONLY | os.O_NONBLOCK)
        self.data = b""

    def read(self, seconds):
        if select.select([self.file], [], [], seconds)[0]:
            try:
                self.data += os.read(self.file, 4096)
            except OSError:
                pass

    def note_ons(self):
        """Pitches begun; a driver may leave out a status byte that is the same as the last."""
        found, status, values = [], 0, []
        for byte in self.data:
            if byte & 0x80:
                status, values = byte, []
                continue
            values.append(byte)
            if len(values) == 2:
                if status & 0xF0 == 0x90 and values[1]:
                    found.append(values[0])
                values = []
        return found

    def silenced(self):
        return re.search(rb"\xb0\x40\x00(\xb0)?\x7b\x00(\xb0)?\x78\x00", self.data) is not None

    def close(self):
        os.close(self.file)


def until(condition, step, seconds=PATIENCE):
    end = time.monotonic() + seconds
    while not condition() and time.monotonic() < end:
        step()
    return condition()


def holds(console):
    return sum(record["type"] == "hold-changed" for record in console.logged())


def plug(action):
    with open(f"{DRIVER}/{action}", "w", encoding="ascii") as file:
        file.write(DEVICE)


def try_ports(program):
    said = subprocess.run([program, "ports"], capture_output=True, text=True, check=False, timeout=PATIENCE).stdout
    lines = [line.strip() for line in said.splitlines() if CARD in line]
    check("warmup ports lists the virtual cards", bool(lines), "; ".join(lines[:4]) or said)
    device = RawDevice()
    with subprocess.Popen([program, "ports", "--test", "--port", CARD], stdout=subprocess.DEVNULL) as testing:
        until(lambda: testing.poll() is not None, lambda: device.read(0.1))
    device.read(0.5)
    check("the scale and the chord of the port test come out of the card", device.note_ons() == SCALE, " ".join(map(str, device.note_ons())))
    device.close()


def try_unplugging(folder):
    device = RawDevice()
    console = Console(folder, port=CARD)
    step = lambda: (console.drain(0.1), device.read(0))
    console.until(b"Lantern", PATIENCE)
    console.sing()
    check("a live run is heard at the card", until(device.note_ons, step), f"{len(device.note_ons())} notes")
    held = holds(console)
    device.close()
    plug("unbind")
    gone = time.monotonic()
    check("unplugged, the run is held", until(lambda: holds(console) > held, lambda: console.drain(0.1)), f"after {time.monotonic() - gone:.1f} emulated seconds")
    plug("bind")
    device = RawDevice()
    console.drain(5)
    console.press(b" ")
    check("plugged in again, going on is heard at the card", until(device.note_ons, step), f"{len(device.note_ons())} notes")
    device.data = b""
    until(device.note_ons, step)
    console.process.kill()
    check("kill -9 is followed by the silence", until(device.silenced, lambda: device.read(0.1), 10))
    console.process.wait()


def main(folder):
    os.chdir("/tmp")
    try_ports(os.path.join(folder, "warmup"))
    try_unplugging(folder)
    return failures == 0


if __name__ == "__main__":
    sys.exit(0 if len(sys.argv) == 2 and main(sys.argv[1]) else 1)
