#!/usr/bin/env python3
"""Says what a plan must sound like, from its files alone, and compares that with what a receiver heard.

    check.py keys    PLAN KEYS.json                 the rungs of `warmup keys PLAN --json` agree with the files
    check.py step    PLAN KEYS.json                 prints the number (from 0) of the first step that is sung
    check.py heard   PLAN KEYS.json RUNGS EVENTS    the first RUNGS rungs of that step were heard, and nothing foreign
    check.py hanging EVENTS                         prints the notes that were never ended; fails when there are any
    check.py sounds  EVENTS                         a note sounds at the end of what was heard
    check.py ends    EVENTS SINCE                   prints the milliseconds from SINCE to the last note-off

EVENTS has one line per event of the receiver: seconds, "event_post_noteon" or "event_post_noteoff", channel, note, velocity.
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
    """Pitch classes, above the tonic, of a Roman numeral."""
    flat, name, rest = re.fullmatch(r"([b#]?)([ivIV]+)(.*)", numeral).groups()
    root = scale[NUMERALS[name.lower()] - 1] + {"b": -1, "#": 1, "": 0}[flat]
    third, fifth = (4 if name.isupper() else 3), (6 if "o" in rest else 7)
    return {(root + tone) % 12 for tone in [0, third, fifth] + ([9 if "o" in rest else 10, 11] if "7" in rest else [])}


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


def check_keys(plan_path, keys_path):
    choir = load(os.path.join(os.path.dirname(os.path.dirname(os.path.abspath(plan_path))), "choir.yaml"))
    placement = {part["id"]: part.get("placement", 0) for part in choir["parts"]}
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


def missing_from(start, expected, onsets):
    """The expected notes without an onset at their time, and the worst error of the others in seconds."""
    missing, worst = [], 0.0
    for at, note in expected:
        near = [abs(seconds - start - at) for seconds, heard in onsets if heard == note]
        if not near or min(near) > TOLERANCE:
            missing.append(f"note {note} at {at:.2f} s")
        else:
            worst = max(worst, min(near))
    return missing, worst


def foreign(step, rungs, start, onsets):
    """What sounded during these rungs and is no tone of the chord or of the melody of that moment."""
    wrong = []
    scale = SCALES[step.exercise.get("mode", "major")]
    harmony = chords(step.exercise, step.length)
    cue = chord("V7", scale) | chord("i" if scale[2] == 3 else "I", scale)
    for seconds, note in onsets:
        at = seconds - start + TOLERANCE
        number = int(at // step.rung_seconds)
        if not 0 <= number < len(rungs):
            continue
        into = at - number * step.rung_seconds
        allowed = {(rungs[number] + n) % 12 for t, n in step.notes if step.seconds(t) <= into <= step.seconds(t) + 2 * TOLERANCE}
        if into >= step.seconds(step.length):
            keys = rungs[number:number + 2]
            allowed |= {(key + tone) % 12 for key in keys for tone in cue}
        current = [tones for t, tones in harmony if step.seconds(t) <= into][-1:]
        allowed |= {(rungs[number] + tone) % 12 for tones in current for tone in tones}
        if note % 12 not in allowed:
            wrong.append(f"note {note} at {seconds - start:.2f} s")
    return wrong


def check_heard(plan_path, keys_path, count, events_path):
    _, step = sung_steps(plan_path, keys_path)[0]
    rungs = [rung["midi"] for rung in step.rungs[:count + 1]]
    expected = [(k * step.rung_seconds + step.seconds(at), rungs[k] + n) for k in range(min(count, len(rungs))) for at, n in step.notes]
    onsets = [(seconds, note) for seconds, on, _, note in read_events(events_path) if on]
    starts = [seconds for seconds, note in onsets if note == expected[0][1]]
    if not starts:
        print(f"note {expected[0][1]} was never heard")
        return False
    (missing, worst), start = min(((missing_from(start, expected, onsets), start) for start in starts), key=lambda tried: (len(tried[0][0]), tried[0][1]))
    extra = foreign(step, rungs, start, [o for o in onsets if o[0] < start + count * step.rung_seconds - 2 * TOLERANCE])
    if missing or extra:
        print("\n".join([f"not heard: {entry}" for entry in missing] + [f"foreign: {entry}" for entry in extra]))
        return False
    print(f"{len(expected)} notes of {step.exercise['id']} in {count} keys, worst error {worst * 1000:.1f} ms")
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


def check_ends(events_path, since):
    ends = [seconds for seconds, on, _, _ in read_events(events_path) if not on and seconds >= since]
    print(f"{(ends[-1] - since) * 1000:.1f} ms" if ends else "nothing was ended afterwards")
    return bool(ends)


def main(command, *args):
    if command == "keys":
        return check_keys(*args)
    if command == "step":
        print(sung_steps(*args)[0][0])
        return True
    if command == "heard":
        return check_heard(args[0], args[1], int(args[2]), args[3])
    if command == "hanging":
        return check_hanging(*args)
    if command == "sounds":
        return bool(sounding_at_end(*args)[0])
    if command == "ends":
        return check_ends(args[0], float(args[1]))
    sys.exit(__doc__)


if __name__ == "__main__":
    if len(sys.argv) < 3:
        sys.exit(__doc__)
    sys.exit(0 if main(*sys.argv[1:]) else 1)
