using System.Globalization;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>Writes one part of the score: exercise after exercise, bar after bar. What concerns everyone stands in the first part.</summary>
internal sealed class PartSheet(XmlOutput xml, Part part, int index, NoteNaming notes)
{
    private readonly NoteElement elements = new(xml);
    private int measure;

    internal void Write(IReadOnlyList<ExerciseSheet> sheets)
    {
        foreach (ExerciseSheet sheet in sheets)
        {
            Write(sheet);
        }
    }

    private void Write(ExerciseSheet sheet)
    {
        IReadOnlyList<Bar> bars = sheet.Bars;
        IReadOnlyList<IReadOnlyList<SheetNote>> line = SheetLine.Of(sheet, sheet.First?.Parts[index]);
        SheetMarks marks = SheetMarks.Of(sheet, line, isFirstPart: index == 0);
        for (int at = 0; at < bars.Count; at++)
        {
            int bar = at;
            measure++;
            xml.Around("measure", () =>
            {
                if (bar == 0 && measure > 1)
                {
                    xml.Put("print", "", ("new-system", "yes"));
                }

                Attributes(sheet, bars, bar);
                if (bar == 0 && index == 0)
                {
                    Heading(sheet);
                }

                Notes(bars[bar], line[bar], marks);
                if (bar == bars.Count - 1)
                {
                    xml.Around("barline", () => xml.Put("bar-style", "light-heavy"), ("location", "right"));
                }
            }, ("number", measure.ToString(CultureInfo.InvariantCulture)));
        }
    }

    private void Attributes(ExerciseSheet sheet, IReadOnlyList<Bar> bars, int bar)
    {
        if (bar > 0 && bars[bar].Meter == bars[bar - 1].Meter)
        {
            return;
        }

        xml.Around("attributes", () =>
        {
            if (measure == 1)
            {
                xml.Put("divisions", Beats.TicksPerBeat);
            }

            if (bar == 0 && sheet.First is { } rung)
            {
                Signature(Key.Of(rung.Tonic, rung.Mode));
            }

            xml.Around("time", () =>
            {
                xml.Put("beats", bars[bar].Meter.Count);
                xml.Put("beat-type", bars[bar].Meter.Unit);
            });
            if (measure == 1)
            {
                PutClef(Clef.For(part));
            }
        });
    }

    private void Signature(Key key) => xml.Around("key", () =>
    {
        xml.Put("fifths", key.Fifths);
        // The format knows one minor; the raised degrees stand at their notes.
        xml.Put("mode", key.Mode is Mode.HarmonicMinor or Mode.MelodicMinor ? ModeData.Id(Mode.Minor) : ModeData.Id(key.Mode));
    });

    private void PutClef(Clef clef) => xml.Around("clef", () =>
    {
        xml.Put("sign", clef.Sign);
        xml.Put("line", clef.Line);
        if (clef.OctaveChange != 0)
        {
            xml.Put("clef-octave-change", clef.OctaveChange);
        }
    });

    private void Heading(ExerciseSheet sheet)
    {
        Words(sheet.Title, "bold");
        if (sheet.Exercise.IsSung)
        {
            Tempo(sheet.Step.Tempo);
        }

        foreach (string line in sheet.Lines(notes))
        {
            Words(line, "normal");
        }
    }

    private void Words(string text, string weight) =>
        Direction(() => xml.Put("words", text, ("font-weight", weight)), null);

    private void Tempo(Tempo tempo)
    {
        string perMinute = tempo.BeatsPerMinute.ToString("0.###", CultureInfo.InvariantCulture);
        Direction(
            () => xml.Around("metronome", () =>
            {
                xml.Put("beat-unit", "quarter");
                xml.Put("per-minute", perMinute);
            }),
            () => xml.Put("sound", "", ("tempo", perMinute)));
    }

    private void Direction(Action type, Action? sound) => xml.Around("direction", () =>
    {
        xml.Around("direction-type", type);
        sound?.Invoke();
    }, ("placement", "above"));

    private void Notes(Bar bar, IReadOnlyList<SheetNote> line, SheetMarks marks)
    {
        if (line.Count == 0)
        {
            Chords(marks, bar.Start, bar.End);
            elements.Rest(bar.Meter.Length);
            return;
        }

        foreach (SheetNote note in line)
        {
            Chords(marks, note.Start, note.Start + note.Length);
            if (marks.Loudness.TryGetValue(note.Start, out string? loudness))
            {
                Direction(() => xml.Around("dynamics", () => xml.Put(loudness, "")), null);
            }

            elements.Put(note, marks.Touch);
        }

        Beats missing = bar.Meter.Length - bar.Length;
        if (missing > Beats.Zero)
        {
            elements.Fill(missing);
        }
    }

    /// <summary>The chords that begin within a stretch, those after its beginning with their distance from it.</summary>
    private void Chords(SheetMarks marks, Beats from, Beats to)
    {
        foreach (ChordSymbol chord in marks.Chords.Where(chord => chord.Start >= from && chord.Start < to))
        {
            elements.Chord(chord, chord.Start - from);
        }
    }
}
