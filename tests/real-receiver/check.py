#!/usr/bin/env python3
"""Says what a plan must sound like, from its files alone, and compares that with what a receiver heard.

    check.py keys    PLAN KEYS.json                 the rungs of `warmup keys PLAN --json` agree with the files
    check.py step    PLAN KEYS.json                 prints the number (from 0) of the first step that is sung
    check.py heard   PLAN KEYS.json RUNGS EVENTS    cue chords, melody and chords of the first RUNGS rungs of that step were heard,
                                                    each at its time, and nothing else
    check.py reached PLAN KEYS.json RUNGS EVENTS    the rung after them has begun
    check.py mark    REVIEW.json RAW PART KIND      `warmup review --json` has a mark typed like this, understood like this
    check.py hanging EVENTS                         prints the notes that were never ended; fails when there are any
    check.py sounds  EVENTS                         a note sounds at the end of what was heard
    check.py silenced EVENTS SINCE                  after SINCE came note-offs and then the silence: pedal up, all notes off, all sound
                                                    off; prints the milliseconds to its end
    check.py scale ONSETS PITCHES                   aubio's onsets and pitches are those of the scale of `warmup ports --test`
    check.py rungs PLAN KEYS.json RUNGS ONSETS PITCHES   they are those of the melody of that step's first RUNGS rungs, one line without chords

EVENTS has one line per event of the receiver: seconds, "event_post_noteon", "..._noteoff" or "..._cc", channel, note or controller, value.
Nothing here comes from the console's own code: it is a second opinion.
"""
import glob
import json
import os
import re
import sys
from fractions import Fraction

import yaml

ROOT = os.path.dirname(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))
TOLERANCE = 0.1  # seconds; a shared machine without real-time rights, and half a beat is never shorter than 0.15
PERCUSSION = 9
ANSWER = 0.6  # seconds; the first chord answers a key press, so it comes as soon as it can, not at a time known before
LEAD_IN = 4  # beats from the cue chord of a step to its first note
SCALES = {
    "major": (0, 2, 4, 5, 7, 9, 11), "minor": (0, 2, 3, 5, 7, 8, 10), "harmonic-minor": (0, 2, 3, 5, 7, 8, 11),
    "melodic-minor": (0, 2, 3, 5, 7, 9, 11), "dorian": (0, 2, 3, 5, 7, 9, 10), "phrygian": (0, 1, 3, 5, 7, 8, 10),
    "lydian": (0, 2, 4, 6, 7, 9, 11), "mixolydian": (0, 2, 4, 5, 7, 9, 10),
}
SOL_FA = {"do": 0, "di": 1, "ra": 1, "re": 2, "ri": 3, "me": 3, "mi": 4, "fa": 5, "fi": 6, "se": 6, "so": 7, "si": 8,
          "le": 8, "la": 9, "li": 10, "te": 10, "ti": 11}
NUMERALS = {"i": 1, "ii": 2, "iii": 3, "iv": 4, "v": 5, "vi": 6, "vii": 7}


def load(path):
    with open(path, encoding="utf-8") as file:
        return yaml.safe_load(file)


def exercises_for(plan_path):
    choir = os.path.dirname(os.path.dirname(os.path.abspath(plan_path)))
    files = glob.glob(f"{ROOT}/src/WarmupConsole.Storage/Catalogue/*.yaml") + glob.glob(f"{choir}/exercises/*.yaml")
    return {exercise["id"]: exercise for file in files for exercise in load(file)["exercises"]}


def semitones(degree, scale):
    """Semitones above the tonic of '5', 'b7', '7,' or "do'"."""
    match = re.fullmatch(r"([b#]*)(\d+)(,*)", degree)
    if match:
        signs, number, down = match.groups()
        octave, step = divmod(int(number) - 1, 7)
        return scale[step] + 12 * (octave - len(down)) + signs.count("#") - signs.count("b")
    match = re.fullmatch(r"([a-z]+)([',]*)", degree)
    return SOL_FA[match[1]] + 12 * (match[2].count("'") - match[2].count(","))


def melody(exercise):
    """[(start in beats, semitones above the tonic)] and the length in beats."""
    scale, at, notes = SCALES[exercise.get("mode", "major")], Fraction(0), []
    for token in exercise["pattern"].split():
        if token == "|":
            continue
        degree, _, length = token.partition(":")
        if degree != "-":
            notes.append((at, semitones(degree, scale)))
        at += Fraction(length or 1)
    return notes, at


def chord(numeral, scale):
    """Pitch classes, above the tonic, of a Roman numeral. A seventh is the scale's; minor on the dominant, diminished on "o"."""
    flat, name, rest = re.fullmatch(r"([b#]?)([ivIV]+)(.*)", numeral).groups()
    number, diminished = NUMERALS[name.lower()], "o" in rest
    leading_note = diminished and number == 7 and not flat
    root = 11 if leading_note else scale[number - 1] + {"b": -1, "#": 1, "": 0}[flat]
    tones = [0, 4 if name.isupper() else 3, 6 if diminished else 7]
    if "7" in rest:
        tones.append(9 if diminished else 10 if number == 5 or flat else (scale[(number + 5) % 7] - root) % 12)
    return {(root + tone) % 12 for tone in tones}


def chords(exercise, length):
    """[(start in beats, pitch classes above the tonic)]"""
    scale, at, result = SCALES[exercise.get("mode", "major")], Fraction(0), []
    minor = scale[2] == 3
    for entry in (exercise.get("harmony") or f"{'i' if minor else 'I'}:{length}").split():
        numeral, _, beats = entry.partition(":")
        result.append((at, chord(numeral, scale)))
        at += Fraction(beats or 1)
    return result


class Step:
    """A sung step: what its files say, and the rungs that the console named for it."""

    def __init__(self, planned, exercise, rungs):
        self.exercise, self.rungs = exercise, rungs
        self.notes, self.length = melody(exercise)
        self.breath = Fraction(planned.get("breath", 2))
        self.seconds_per_beat = 60 / (planned.get("tempo") or exercise["tempo"]["default"])

    def seconds(self, beats):
        return float(beats) * self.seconds_per_beat

    @property
    def rung_seconds(self):
        return self.seconds(self.length + self.breath)


def sung_steps(plan_path, keys_path):
    exercises = exercises_for(plan_path)
    planned = load(plan_path)["steps"]
    with open(keys_path, encoding="utf-8") as file:
        listed = json.load(file)["steps"]
    if [step["exercise"] for step in planned] != [step["exercise"] for step in listed]:
        sys.exit("the steps of the plan and of warmup keys differ")
    return [(number, Step(p, exercises[p["exercise"]], l["rungs"])) for number, (p, l) in enumerate(zip(planned, listed)) if l["rungs"]]


def midi(pitch):
    """The number of 'Bb3'; C4 is 60."""
    letter, signs, octave = re.fullmatch(r"([A-G])([b#]*)(-?\d)", pitch).groups()
    return 12 * (int(octave) + 1) + SCALES["major"]["CDEFGAB".index(letter)] + signs.count("#") - signs.count("b")


def choir_for(plan_path):
    return load(os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(plan_path))), "choir.yaml"))


def placements_for(plan_path):
    return {part["id"]: part.get("placement", 0) for part in choir_for(plan_path)["parts"]}


def check_keys(plan_path, keys_path):
    choir, placement = choir_for(plan_path), placements_for(plan_path)
    extreme = {part["id"]: [midi(end) for end in part["extreme"].split("-")] for part in choir["parts"]}
    wrong, count = [], 0
    for number, step in sung_steps(plan_path, keys_path):
        low, high = min(n for _, n in step.notes), max(n for _, n in step.notes)
        for rung in step.rungs:
            count += 1
            where = f"step {number} ({step.exercise['id']}), {rung['tonic']}"
            if abs(rung["seconds"] - step.rung_seconds) > 0.051:
                wrong.append(f"{where}: {rung['seconds']} s, by the files {step.rung_seconds:.2f} s")
            for part in rung["parts"]:
                tonic = rung["midi"] + 12 * placement[part["part"]]
                if (part["low"], part["high"]) != (tonic + low, tonic + high):
                    wrong.append(f"{where}, {part['part']}: {part['low']}-{part['high']}, by the files {tonic + low}-{tonic + high}")
                if part["sings"] and not extreme[part["part"]][0] <= part["low"] <= part["high"] <= extreme[part["part"]][1]:
                    wrong.append(f"{where}, {part['part']}: sings {part['low']}-{part['high']}, beyond its extreme range")
    print("\n".join(wrong) if wrong else f"{count} rungs agree")
    return not wrong and count > 0


def read_events(path):
    """[(seconds, is it a note-on, channel, note)], without percussion."""
    events = []
    with open(path, encoding="utf-8", errors="replace") as file:
        for fields in map(str.split, file):
            if len(fields) == 5 and fields[1] in ("event_post_noteon", "event_post_noteoff") and int(fields[2]) != PERCUSSION:
                events.append((float(fields[0]), fields[1].endswith("on") and fields[4] != "0", int(fields[2]), int(fields[3])))
    return events


def struck(step, placements, count):
    """What has to be struck, in order: [(seconds from the first rung, exact notes, pitch classes of the chord)]."""
    scale = SCALES[step.exercise.get("mode", "major")]
    tonic_chord = chord("i" if scale[2] == 3 else "I", scale)
    at = {}

    def add(seconds, notes, tones):
        moment = at.setdefault(round(seconds, 4), (set(), set()))
        moment[0].update(notes)
        moment[1].update(tone % 12 for tone in tones)

    add(-step.seconds(LEAD_IN), [], [step.rungs[0]["midi"] + tone for tone in tonic_chord])
    for number, rung in enumerate(step.rungs[:count]):
        start = number * step.rung_seconds
        octaves = {placements[part["part"]] for part in rung["parts"] if part["sings"]} or {0}
        for beat, note in step.notes:
            add(start + step.seconds(beat), [rung["midi"] + note + 12 * octave for octave in octaves], [])
        for beat, tones in chords(step.exercise, step.length):
            add(start + step.seconds(beat), [], [rung["midi"] + tone for tone in tones])
        if number + 1 < len(step.rungs):
            key = step.rungs[number + 1]["midi"]
            leading = tonic_chord if key == rung["midi"] else chord("V7", scale)
            add(start + step.seconds(step.length), [], [key + tone for tone in leading])
            if key != rung["midi"]:
                add(start + step.seconds(step.length + step.breath / 2), [], [key + tone for tone in tonic_chord])
    return sorted((seconds, *moment) for seconds, moment in at.items())


def belongs(seconds, at):
    return -TOLERANCE <= seconds - at <= (ANSWER if at < 0 else TOLERANCE)


def compare(expected, melody_tones, onsets):
    """What is missing, what is foreign, and the worst error in seconds; onsets are [(seconds from the first rung, note)]."""
    wrong, worst = [], 0.0
    for at, notes, tones in expected:
        heard = {note: seconds for seconds, note in onsets if belongs(seconds, at)}
        worst = max([worst] + [abs(heard[note] - at) for note in heard if note in notes])
        wrong += [f"not heard: note {note} at {at:.2f} s" for note in sorted(notes - set(heard))]
        # A tone of the chord that the melody holds already is not struck again.
        held = {note % 12 for begin, end, note in melody_tones if begin < at < end}
        wrong += [f"not heard: a tone {tone} of the chord at {at:.2f} s" for tone in sorted(tones - {note % 12 for note in heard} - held)]
    for seconds, note in onsets:
        near = [entry for entry in expected if belongs(seconds, entry[0])]
        if not any(note in notes or note % 12 in tones for _, notes, tones in near):
            wrong.append(f"foreign: note {note} at {seconds:.2f} s")
    return wrong, worst


def restruck(events):
    """Notes that were struck while they sounded."""
    sounding, wrong = set(), []
    for seconds, on, channel, note in events:
        if on and (channel, note) in sounding:
            wrong.append(f"struck while it sounds: note {note}")
        (sounding.add if on else sounding.discard)((channel, note))
    return wrong


def check_reached(plan_path, keys_path, count, events_path):
    _, step = sung_steps(plan_path, keys_path)[0]
    onsets = [seconds for seconds, on, _, _ in read_events(events_path) if on]
    return bool(onsets) and onsets[-1] - onsets[0] > step.seconds(LEAD_IN) + count * step.rung_seconds


def check_heard(plan_path, keys_path, count, events_path):
    _, step = sung_steps(plan_path, keys_path)[0]
    count = min(count, len(step.rungs))
    expected = struck(step, placements_for(plan_path), count)
    melody_tones = [
        (k * step.rung_seconds + step.seconds(at), k * step.rung_seconds + step.seconds(end), rung["midi"] + note + 12 * octave)
        for k, rung in enumerate(step.rungs[:count])
        for (at, note), end in zip(step.notes, [at for at, _ in step.notes[1:]] + [step.length])
        for octave in set(placements_for(plan_path).values())]
    events = read_events(events_path)
    onsets = [(seconds, note) for seconds, on, _, note in events if on]
    first = next(notes for _, notes, _ in expected if notes)
    starts = [seconds for seconds, note in onsets if note in first]
    if not starts:
        print(f"none of the notes {sorted(first)} was heard")
        return False
    until = count * step.rung_seconds - 2 * TOLERANCE
    tried = [compare(expected, melody_tones, [(seconds - start, note) for seconds, note in onsets if seconds - start < until]) for start in starts]
    wrong, worst = min(tried, key=lambda result: (len(result[0]), result[1]))
    wrong += restruck(events)
    if wrong:
        print("\n".join(wrong))
        return False
    melody_count = sum(len(notes) for _, notes, _ in expected)
    chord_count = sum(bool(tones) for _, _, tones in expected)
    print(f"{melody_count} melody notes and {chord_count} chords of {step.exercise['id']} in {count} keys, melody at worst {worst * 1000:.1f} ms off")
    return True


def sounding_at_end(events_path):
    """The notes begun and not ended, and how many were begun at all."""
    sounding, count = set(), 0
    for _, on, channel, note in read_events(events_path):
        count += on
        (sounding.add if on else sounding.discard)((channel, note))
    return sounding, count


def check_hanging(events_path):
    sounding, count = sounding_at_end(events_path)
    print(f"{count} notes begun and ended" if not sounding else f"still sounding (channel, note): {sorted(sounding)}")
    return not sounding and count > 0


def check_silenced(events_path, since):
    with open(events_path, encoding="utf-8", errors="replace") as file:
        lines = [fields for fields in map(str.split, file) if len(fields) == 5 and float(fields[0]) >= since]
    found, ended, wanted = 0, 0, [["64", "0"], ["123", "0"], ["120", "0"]]
    for seconds, event, _, number, value in lines:
        if event == "event_post_cc" and [number, value] == wanted[found]:
            found += 1
            if found == len(wanted):
                print(f"{(float(seconds) - since) * 1000:.1f} ms")
                return ended > 0
        ended += event == "event_post_noteoff"
    print("the silence never came: " + (" ".join(" ".join(fields[1:]) for fields in lines[:6]) or "nothing at all was sent"))
    return False


def check_mark(review_path, raw, part, kind):
    with open(review_path, encoding="utf-8") as file:
        marks = json.load(file)["marks"]
    found = [mark for mark in marks if (mark["raw"], mark["part"], mark["kind"]) == (raw, part, kind)]
    print("\n".join(f"{mark['part']} {mark['kind']} in {mark['key']}, pitches {mark['pitches']}" for mark in found) or f"marks: {marks}")
    return len(found) == 1 and bool(found[0]["key"]) and bool(found[0]["pitches"])


def read_aubio(onsets_path, pitches_path):
    """Seconds of the onsets, and [(seconds, pitch as a MIDI number)]."""
    with open(onsets_path, encoding="ascii") as onsets, open(pitches_path, encoding="ascii") as pitches:
        return [float(line) for line in onsets if line.strip()], [tuple(map(float, line.split())) for line in pitches if line.strip()]


def median_pitch(pitches, begin, end):
    middle = sorted(pitch for at, pitch in pitches if begin <= at <= end and pitch > 0)
    return middle[len(middle) // 2] if middle else 0.0


def check_rungs(plan_path, keys_path, count, onsets_path, pitches_path):
    """The beginning is the onset with which most pitches are right."""
    onsets, pitches = read_aubio(onsets_path, pitches_path)
    _, step = sung_steps(plan_path, keys_path)[0]
    octave, = set(placements_for(plan_path).values())
    ends = [at for at, _ in step.notes[1:]] + [step.length]
    tones = [(number * step.rung_seconds + step.seconds(at), min(1.0, step.seconds(end - at)), rung["midi"] + 12 * octave + note)
             for number, rung in enumerate(step.rungs[:count]) for (at, note), end in zip(step.notes, ends)]
    if count > len(step.rungs) or not onsets:
        print(f"{len(step.rungs)} keys and {len(onsets)} onsets")
        return False
    tried = [(start, [abs(median_pitch(pitches, start + at + 0.35 * long, start + at + 0.85 * long) - tone) for at, long, tone in tones]) for start in onsets]
    start, off = min(tried, key=lambda one: (sum(error > 0.3 for error in one[1]), sum(one[1])))
    late = [min(abs(onset - start - at) for onset in onsets) for at, _, _ in tones]
    print(f"{len(tones)} notes of {step.exercise['id']} in {count} keys, pitches at worst {max(off):.2f} semitones off, onsets at worst {1000 * max(late):.0f} ms")
    return max(off) <= 0.3 and max(late) <= 0.05


def check_scale(onsets_path, pitches_path):
    """Eight notes, half a second each; a pitch is the median of the middle of its note, in MIDI numbers."""
    onsets, pitches = read_aubio(onsets_path, pitches_path)
    scale = [60 + step for step in SCALES["major"]] + [72]
    notes = onsets[:len(scale)]
    heard = [median_pitch(pitches, start + 0.15, start + 0.4) for start in notes]
    gaps = [later - earlier for earlier, later in zip(notes, notes[1:])]
    worst_pitch = max((abs(a - b) for a, b in zip(heard, scale)), default=99)
    worst_gap = max((abs(gap - 0.5) for gap in gaps), default=99)
    print(f"pitches {' '.join(f'{pitch:.2f}' for pitch in heard)}, at worst {worst_pitch:.2f} semitones off; onsets at worst {worst_gap * 1000:.0f} ms from half a second apart")
    return len(notes) == len(scale) and worst_pitch <= 0.3 and worst_gap <= 0.05


def main(command, *args):
    if command == "keys":
        return check_keys(*args)
    if command == "step":
        print(sung_steps(*args)[0][0])
        return True
    if command == "heard":
        return check_heard(args[0], args[1], int(args[2]), args[3])
    if command == "reached":
        return check_reached(args[0], args[1], int(args[2]), args[3])
    if command == "mark":
        return check_mark(*args)
    if command == "scale":
        return check_scale(*args)
    if command == "rungs":
        return check_rungs(args[0], args[1], int(args[2]), args[3], args[4])
    if command == "hanging":
        return check_hanging(*args)
    if command == "sounds":
        return bool(sounding_at_end(*args)[0])
    if command == "silenced":
        return check_silenced(args[0], float(args[1]))
    sys.exit(__doc__)


if __name__ == "__main__":
    if len(sys.argv) < 3:
        sys.exit(__doc__)
    sys.exit(0 if main(*sys.argv[1:]) else 1)
