#!/usr/bin/env python3
"""Says what an exported plan must hold, from the plan's files and `warmup keys --json`, and compares that with what others read and hear.

    export.py csv     PLAN CSV                     midicsv's listing: format, resolution, tracks and their names, no note left on
    export.py notes   PLAN KEYS.json MIDI          every part's track has the notes, lengths and syllables that the files say
    export.py alone   CSV PART                     midicsv's listing without the other tracks' notes
    export.py pitches PLAN KEYS.json PART MIDI PITCHES   what aubio heard while each note sounded is that note
    export.py within  PLAN MIDI PART               no note of the part's track leaves its comfortable range

Nothing here comes from the console's own code: it is a second opinion.
"""
import csv
import json
import sys
from fractions import Fraction

import mido

from check import SCALES, choir_for, exercises_for, load, midi, semitones

TICKS = 960
COURSE_TRACKS = 2  # the course of the piece and the piano, before the parts
SHARE = {"staccato": Fraction(1, 2), "marcato": Fraction(3, 4)}


def line_for(exercise, part):
    """(pattern, syllables, beats of rest before it) of the first line that names the part or one of its groups, or of everyone."""
    for voice in exercise.get("voices", []):
        if part["id"] in voice["parts"] or set(part.get("groups", [])) & set(voice["parts"]) or "everyone" in voice["parts"]:
            return voice["pattern"], voice.get("syllables", ""), Fraction(voice.get("offset", 0))
    return exercise["pattern"], exercise.get("syllables", ""), Fraction(0)


def sung(exercise, part):
    """[(start in beats, sounding length in beats, semitones above the tonic, syllable or None)]"""
    pattern, syllables, at = line_for(exercise, part)
    scale, notes = SCALES[exercise.get("mode", "major")], []
    words = [None if word == "~" else word.split("/")[0] for word in syllables.split()]
    for token in (token for token in pattern.split() if token != "|"):
        degree, _, length = token.partition(":")
        length = Fraction(length or 1)
        if degree != "-":
            word = words[len(notes)] if len(notes) < len(words) else None
            notes.append((at, length * SHARE.get(exercise.get("articulation"), 1), semitones(degree, scale), word))
        at += length
    return notes


def expected(plan_path, keys_path, part):
    """[[(ticks since the rung's first beat, length in ticks, MIDI number, syllable)] for each rung in which the part sings]"""
    exercises = exercises_for(plan_path)
    with open(keys_path, encoding="utf-8") as file:
        listed = json.load(file)["steps"]
    rungs = []
    for planned, step in zip(load(plan_path)["steps"], listed):
        exercise = exercises[planned["exercise"]]
        for rung in step["rungs"]:
            own = next(p for p in rung["parts"] if p["part"] == part["id"])
            if own["sings"]:
                tonic = rung["midi"] + 12 * (part.get("placement", 0) + own["octave_shift"])
                rungs.append([(int(at * TICKS), max(1, int(length * TICKS)), tonic + note, word) for at, length, note, word in sung(exercise, part)])
    return rungs


def part_named(plan_path, name):
    return next(part for part in choir_for(plan_path)["parts"] if part["id"] == name)


def track_of(file, part):
    return next(track for track in file.tracks[COURSE_TRACKS:] if track.name == part["name"])


def notes_of(track):
    """[(start, length, MIDI number)] and [(tick, syllable)]"""
    at, sounding, notes, words = 0, {}, [], []
    for message in track:
        at += message.time
        if message.type == "lyrics":
            words.append((at, message.text.encode("latin1").decode("utf-8")))
        elif message.type == "note_on" and message.velocity > 0:
            if message.note in sounding:
                sys.exit(f"note {message.note} is struck at {at} while it sounds")
            sounding[message.note] = at
        elif message.type in ("note_on", "note_off"):
            start = sounding.pop(message.note)
            notes.append((start, at - start, message.note))
    if sounding:
        sys.exit(f"left sounding: {sorted(sounding)}")
    return sorted(notes), words


def check_csv(plan_path, csv_path):
    with open(csv_path, encoding="latin1", newline="") as file:
        rows = [[cell.strip() for cell in row] for row in csv.reader(file, skipinitialspace=True)]
    header = next(row for row in rows if row[2] == "Header")
    names = [row[3] for row in rows if row[2] == "Title_t"][1:]
    wanted = ["Piano"] + [part["name"] for part in choir_for(plan_path)["parts"]]
    on, off = (sum(row[2] == kind for row in rows) for kind in ("Note_on_c", "Note_off_c"))
    ends = sum(row[2] == "End_track" for row in rows)
    print(f"format {header[3]}, {header[5]} ticks, tracks {', '.join(names)}, {on} notes")
    return header[3:] == ["1", str(len(wanted) + 1), str(TICKS)] and names == wanted and on == off > 0 and ends == len(wanted) + 1


def check_notes(plan_path, keys_path, midi_path):
    file = mido.MidiFile(midi_path)
    count = 0
    for part in choir_for(plan_path)["parts"]:
        notes, words = notes_of(track_of(file, part))
        rungs = expected(plan_path, keys_path, part)
        got, spoken = list(notes), list(words)
        for number, rung in enumerate(rungs):
            start = got[0][0] - rung[0][0]
            for at, length, note, word in rung:
                if got[0] != (start + at, length, note):
                    sys.exit(f"{part['name']}, rung {number + 1}: {got[0]} instead of {(start + at, length, note)}")
                if word and spoken.pop(0) != (start + at, word):
                    sys.exit(f"{part['name']}, rung {number + 1}: the syllable {word} is not at its note")
                got.pop(0)
        if got or spoken:
            sys.exit(f"{part['name']}: {len(got)} notes and {len(spoken)} syllables more than the plan has")
        count += len(notes)
    print(f"{count} notes")
    return count > 0


def print_alone(csv_path, name):
    """
    Tempos stay; of the rest only one track, and on the piano: the tails of sustained voices run into the next note, and aubio is
    sure of the piano's pitches. The name is compared without regard to capitals.
    """
    with open(csv_path, encoding="latin1") as file:
        lines = [line.rstrip("\n") for line in file]
    number = next(line.split(",")[0] for line in lines if "Title_t" in line and line.lower().rstrip().endswith(f'"{name}"'))
    for line in lines:
        fields = line.split(", ")
        if fields[0] in ("0", "1", number) or "Start_track" in line or "End_track" in line:
            print(", ".join(fields[:4] + ["0"]) if fields[2:3] == ["Program_c"] else line)
    return True


def seconds_at(tempos, tick):
    total = 0.0
    for (at, micros), (until, _) in zip(tempos, tempos[1:] + [(None, None)]):
        end = tick if until is None else min(tick, until)
        if end > at:
            total += (end - at) * micros / 1e6 / TICKS
    return total


def check_pitches(plan_path, keys_path, name, midi_path, pitches_path):
    """
    The median of what was heard between 30 % and 80 % of each note, of a long one of its first second, before it fades; notes under a fifth
    of a second are too short to be measured.
    """
    part, file = part_named(plan_path, name), mido.MidiFile(midi_path)
    at, tempos = 0, []
    for message in file.tracks[0]:
        at += message.time
        if message.type == "set_tempo":
            tempos.append((at, message.tempo))
    notes, _ = notes_of(track_of(file, part) if any(t.name == part["name"] for t in file.tracks[COURSE_TRACKS:]) else file.tracks[-1])
    wanted = [note for rung in expected(plan_path, keys_path, part) for _, _, note, _ in rung]
    if [note for _, _, note in notes] != wanted:
        sys.exit("what is rendered is not what the plan says")
    with open(pitches_path, encoding="ascii") as lines:
        heard = [tuple(map(float, line.split())) for line in lines if line.strip()]
    worst, measured, wrong = 0.0, 0, []
    for start, length, note in notes:
        begin = seconds_at(tempos, start)
        end = min(begin + 1, seconds_at(tempos, start + length))
        if end - begin < 0.2:
            continue
        middle = sorted(pitch for when, pitch in heard if begin + 0.3 * (end - begin) <= when <= begin + 0.8 * (end - begin) and pitch > 0)
        measured += 1
        got = middle[len(middle) // 2] if middle else 0.0
        worst = max(worst, abs(got - note))
        if abs(got - note) > 0.3:
            wrong.append(f"at {begin:.2f} s {got:.2f} instead of {note}")
    print(f"{measured} of {len(notes)} notes measured, at worst {worst:.2f} semitones off" if not wrong else "\n".join(wrong[:10]))
    return not wrong and measured > 0


def check_within(plan_path, midi_path, name):
    part = part_named(plan_path, name)
    low, high = (midi(end) for end in part["comfortable"].split("-"))
    notes, _ = notes_of(track_of(mido.MidiFile(midi_path), part))
    pitches = [note for _, _, note in notes]
    print(f"{len(pitches)} notes from {min(pitches)} to {max(pitches)}, allowed {low} to {high}")
    return low <= min(pitches) and max(pitches) <= high


def main(command, *args):
    commands = {"csv": check_csv, "notes": check_notes, "alone": print_alone, "pitches": check_pitches, "within": check_within}
    return commands[command](*args) if command in commands else sys.exit(__doc__)


if __name__ == "__main__":
    if len(sys.argv) < 3:
        sys.exit(__doc__)
    sys.exit(0 if main(*sys.argv[1:]) else 1)
