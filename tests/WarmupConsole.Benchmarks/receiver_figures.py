#!/usr/bin/env python3
"""When notes arrive at a JACK receiver: the console's live run, and two other players with the same notes. Rows for docs/performance.md.

    receiver_figures.py FOLDER SECONDS     FOLDER holds a published `warmup`; SECONDS of singing are measured

Needs (Debian) jackd2 librtmidi6 fluidsynth timgm6mb-soundfont python3-jack-client python3-mido python3-rtmidi. The receiver is a process of its
own and knows nothing of the console. An arrival is the moment at which JACK hands its period over, by the system's clock, and the place in that period: the
frames of a server that misses periods run unevenly. A straight line is laid through due times and arrivals; what is
reported is how far from that line an onset arrives. Every delay that is always the same is left out.
"""
import array
import os
import shutil
import signal
import statistics
import subprocess
import sys
import tempfile
import time

RATE, PERIOD = 48000, 128
SERVER = "receiver-figures"
SOUNDFONT = "/usr/share/sounds/sf2/TimGM6mb.sf2"
TICKS_PER_SECOND = 25000
CLAVES, PERCUSSION = 75, 9
LEAD = 1.0  # seconds of rest at the head of the file
ROOM = 5  # seconds more than the longest run


def receive(folder):
    """The receiver: second and bytes of every message, and the sound of its audio port, until it is told to end."""
    import jack
    client = jack.Client("ear", servername=SERVER, no_start_server=True)
    midi, audio = client.midi_inports.register("in"), client.inports.register("sound")
    heard, blocks, late = [], [], [0]

    @client.set_process_callback
    def process(_):
        now = time.monotonic()
        heard.extend((now + offset / RATE, bytes(data)) for offset, data in midi.incoming_midi_events())
        blocks.append((now, bytes(audio.get_buffer())))

    @client.set_xrun_callback
    def xrun(_):
        late[0] += 1

    with client:
        open(f"{folder}/ready", "w", encoding="ascii").close()
        signal.sigwait([signal.SIGTERM])
    with open(f"{folder}/midi", "w", encoding="ascii") as file:
        file.writelines(f"{second} {data.hex()}\n" for second, data in heard)
    with open(f"{folder}/sound", "wb") as file:
        file.writelines(block for _, block in blocks)
    with open(f"{folder}/facts", "w", encoding="ascii") as file:
        file.write(" ".join(map(str, [late[0], *(second for second, _ in blocks)])))


class Ear:
    """The receiver while it listens, and what it heard afterwards."""

    def __enter__(self):
        self.folder = tempfile.mkdtemp(prefix="warmup-ear-")
        signal.pthread_sigmask(signal.SIG_BLOCK, [signal.SIGTERM])  # the child inherits it and waits for it
        self.process = subprocess.Popen([sys.executable, __file__, "--receive", self.folder])
        signal.pthread_sigmask(signal.SIG_UNBLOCK, [signal.SIGTERM])
        wait_for(lambda: os.path.exists(f"{self.folder}/ready"), "the receiver")
        return self

    def __exit__(self, *_):
        self.process.terminate()
        self.process.wait()
        with open(f"{self.folder}/midi", encoding="ascii") as file:
            self.midi = [(float(second), bytes.fromhex(data)) for second, data in map(str.split, file)]
        self.sound = array.array("f")
        with open(f"{self.folder}/sound", "rb") as file:
            self.sound.frombytes(file.read())
        with open(f"{self.folder}/facts", encoding="ascii") as file:
            xruns, *blocks = file.read().split()
        self.xruns, self.blocks = int(xruns), list(map(float, blocks))
        shutil.rmtree(self.folder)

    def note_ons(self):
        return [second for second, data in self.midi if data[0] & 0xF0 == 0x90 and data[2]]

    def strokes(self, count):
        """Where the sound leaps up out of quiet: seconds of the system's clock, and seconds of samples."""
        peak = max(map(abs, self.sound), default=0)
        found, quiet = [], RATE // 20
        for index, value in enumerate(self.sound):
            if abs(value) < peak / 8:
                quiet += 1
            elif quiet >= RATE // 20:
                found.append((self.blocks[index // PERIOD] + index % PERIOD / RATE, index / RATE))
                quiet = 0
            elif abs(value) > peak / 4:
                quiet = 0
        return zip(*found[:count])


def wait_for(condition, what, seconds=15):
    end = time.monotonic() + seconds
    while not condition():
        if time.monotonic() > end:
            sys.exit(f"{what} did not come")
        time.sleep(0.05)


def report(name, due, arrived, xruns):
    """Distances from the line, in milliseconds."""
    if len(due) != len(arrived):
        print(f"| {name}: {len(arrived)} of {len(due)} arrived, so not compared ({xruns} periods missed) | | | | |", flush=True)
        return
    slope, start = statistics.linear_regression(due, arrived)
    errors = sorted(abs(second - (start + slope * at)) * 1000 for at, second in zip(due, arrived))
    picked = [errors[min(len(errors) - 1, len(errors) * part // 100)] for part in (50, 99)] + [errors[-1]]
    print(f"| {name} | {len(errors)} | " + " | ".join(f"{error:.2f}" for error in picked) + f" | {xruns} |", flush=True)


def onsets(dues):
    """Each moment once, though several notes may begin in it."""
    return sorted(set(dues))


def lead_console(folder, seconds):
    """A live run; the due second and pitch of each of its notes, from its log and its trace."""
    from figures import NANO, Console
    from live_figures import lead, onsets as sent_onsets
    console = Console(folder, port="ear")
    console.until(b"Lantern")
    console.sing()
    lead(console, seconds, redraw=True)
    console.leave()
    ons = [(at, message) for at, message in console.sent() if message[0] & 0xF0 == 0x90]
    late = dict(sent_onsets(console))
    # A chord that answers a key press has no due time; it is left out on both sides.
    notes = [((at - late[at]) / NANO if at in late else None, message[1]) for at, message in ons]
    console.forget()
    return notes


def write_file(notes, path, percussion):
    import mido
    file = mido.MidiFile(type=0, ticks_per_beat=TICKS_PER_SECOND)
    track = mido.MidiTrack()
    file.tracks.append(track)
    track.append(mido.MetaMessage("set_tempo", tempo=1000000))
    begin = notes[0][0] - LEAD
    at = lambda seconds: round((seconds - begin) * TICKS_PER_SECOND)
    if percussion:
        events = [(at(due), "note_on", CLAVES, PERCUSSION, 110) for due in onsets(due for due, _ in notes)]
    else:
        events = [(at(due), "note_on", note, 0, 80) for due, note in notes] + [(at(due + 0.1), "note_off", note, 0, 0) for due, note in notes]
    last = 0
    for tick, kind, note, channel, velocity in sorted(events):
        track.append(mido.Message(kind, note=note, channel=channel, velocity=velocity, time=tick - last))
        last = tick
    file.save(path)


def play_with_mido(path):
    import mido
    mido.set_backend("mido.backends.rtmidi/UNIX_JACK")
    name = next(name for name in mido.get_output_names() if name.startswith("ear:"))
    with mido.open_output(name) as port:
        for message in mido.MidiFile(path).play():
            port.send(message)
        time.sleep(0.2)


def play_with_fluidsynth(path, seconds):
    player = subprocess.Popen(
        ["fluidsynth", "-q", "-i", "-a", "jack", "-o", f"audio.jack.server={SERVER}", "-o", "audio.jack.id=fluid", "-o", "audio.jack.autoconnect=0",
         "-o", "synth.reverb.active=0", "-o", "synth.chorus.active=0", "-r", str(RATE), SOUNDFONT, path],
        stdin=subprocess.DEVNULL, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    ports = lambda: subprocess.run(["jack_lsp"], capture_output=True, text=True, check=False).stdout
    wait_for(lambda: "fluid:left" in ports(), "FluidSynth")
    subprocess.run(["jack_connect", "fluid:left", "ear:sound"], check=True)
    try:
        player.wait(seconds + ROOM)
    except subprocess.TimeoutExpired:
        player.terminate()
        player.wait()


def measure(folder, seconds):
    print(f"Load when this began: {os.getloadavg()[0]:.1f}; JACK's period is {PERIOD / RATE * 1000:.2f} ms\n")
    print("| at a JACK receiver, milliseconds from the due time | number | median | 99 % | worst | periods missed |\n|---|---|---|---|---|---|")
    with Ear() as ear:
        notes = lead_console(folder, seconds)
    arrived = ear.note_ons()
    if len(arrived) == len(notes):
        pairs = [(due, second) for (due, _), second in zip(notes, arrived) if due is not None]
        report("the console, leading live, screen redrawn ten times a second", *map(list, zip(*pairs)), ear.xruns)
    else:
        report("the console", [due for due, _ in notes], arrived, ear.xruns)
    timed = sorted((due, note) for due, note in notes if due is not None)
    begin = timed[0][0]
    with tempfile.TemporaryDirectory() as work:
        path = os.path.join(work, "same.mid")
        write_file(timed, path, percussion=False)
        with Ear() as ear:
            play_with_mido(path)
        report("python3-mido, the same notes from a file", [due - begin for due, _ in timed], ear.note_ons(), ear.xruns)
        write_file(timed, path, percussion=True)
        strokes = onsets(due - begin for due, _ in timed)
        with Ear() as ear:
            play_with_fluidsynth(path, strokes[-1] + LEAD)
        heard, sampled = ear.strokes(len(strokes))
        report("FluidSynth's player, the same onsets from a file, by their sound", strokes, heard, ear.xruns)
        report("the same by the samples that JACK asked it for, which is its only clock", strokes, sampled, ear.xruns)


def main(folder, seconds):
    os.environ.update(JACK_DEFAULT_SERVER=SERVER, JACK_NO_AUDIO_RESERVATION="1")
    rights = "-R" if subprocess.run(["chrt", "-f", "1", "true"], capture_output=True, check=False).returncode == 0 else "-r"
    server = subprocess.Popen(["jackd", rights, "-m", "-n", SERVER, "-d", "dummy", "-r", str(RATE), "-p", str(PERIOD)],
                              stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    try:
        wait_for(lambda: subprocess.run(["jack_lsp"], capture_output=True, check=False).returncode == 0, "JACK")
        measure(folder, seconds)
    finally:
        server.terminate()
        server.wait()


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    if sys.argv[1] == "--receive":
        receive(sys.argv[2])
    else:
        main(sys.argv[1], float(sys.argv[2]))
