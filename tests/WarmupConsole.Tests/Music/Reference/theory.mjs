// Reference values for pitches, keys, scales and intervals, by other means than the program's: npm tonal 6.4.3 (6.5.1 does not install).
// npm install tonal@6.4.3 && node theory.mjs > theory.csv
// Each row: what, of what (several words by spaces), values as that library has them.
import { Chord, Interval, Key, Note, Scale } from "tonal";

const letters = ["C", "D", "E", "F", "G", "A", "B"];
const signs = ["bb", "b", "", "#", "##"];
const majors = ["Cb", "Gb", "Db", "Ab", "Eb", "Bb", "F", "C", "G", "D", "A", "E", "B", "F#", "C#"];
const minors = ["Ab", "Eb", "Bb", "F", "C", "G", "D", "A", "E", "B", "F#", "C#", "G#", "D#", "A#"];
const chromatic = ["C", "Db", "D", "Eb", "E", "F", "Gb", "G", "Ab", "A", "Bb", "B"];
const intervals = ["1P", "1A", "2m", "2M", "2A", "3m", "3M", "4P", "4A", "5d", "5P", "5A", "6m", "6M", "7m", "7M", "8P", "9M", "10M", "-2m", "-3M", "-4P", "-8P"];
const between = [
  ["C4", "F#4"], ["C4", "Gb4"], ["B3", "Cb4"], ["B3", "C4"], ["F4", "B4"], ["E4", "Ab4"], ["Ab4", "C5"], ["G4", "C4"], ["C5", "B3"], ["Bb3", "D4"],
  ["F#4", "E5"], ["Eb4", "F#4"], ["D4", "D6"], ["A4", "Bb3"], ["Db4", "B4"], ["C4", "C#4"], ["G#4", "Ab4"], ["B#3", "C4"], ["F5", "G3"], ["Cb4", "B#4"],
];

const row = (...cells) => console.log(cells.join(","));
const steps = (interval) => (interval.num > 0 ? interval.num - 1 : interval.num + 1);

row("what", "of", "value", "more");
for (const name of letters.flatMap((letter) => signs.map((sign) => letter + sign + "4"))) row("note", name, Note.midi(name), Note.freq(name).toFixed(4));
for (const octave of [2, 3, 5]) for (const name of chromatic) row("note", name + octave, Note.midi(name + octave), Note.freq(name + octave).toFixed(4));
for (const tonic of majors) {
  const key = Key.majorKey(tonic);
  row("signature", `${tonic} major`, key.alteration);
  row("scale", `${tonic} major`, key.scale.join(" "));
  row("dominant", `${tonic} major`, Chord.get(key.chords[4]).notes.join(" "));
}
for (const tonic of minors) {
  const key = Key.minorKey(tonic);
  row("signature", `${tonic} minor`, key.alteration);
  row("scale", `${tonic} minor`, key.natural.scale.join(" "));
  row("scale", `${tonic} harmonic-minor`, key.harmonic.scale.join(" "));
  row("scale", `${tonic} melodic-minor`, key.melodic.scale.join(" "));
  row("dominant", `${tonic} minor`, Chord.get(key.harmonic.chords[4]).notes.join(" "));
}
for (const tonic of ["C", "Eb", "F#"]) for (const mode of ["dorian", "phrygian", "lydian", "mixolydian"]) row("scale", `${tonic} ${mode}`, Scale.get(`${tonic} ${mode}`).notes.join(" "));
for (const from of ["C4", "Db4", "F#4", "B3"]) for (const name of intervals) {
  const interval = Interval.get(name);
  row("transpose", `${from} ${steps(interval)} ${interval.semitones}`, Note.transpose(from, name));
}
for (const [from, to] of between) {
  const interval = Interval.get(Interval.distance(from, to));
  row("between", `${from} ${to}`, steps(interval), interval.semitones);
}
