using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Repertoire;

/// <summary>Small scores for tests: bars of four quarter notes at 60, so that a beat is a second.</summary>
internal static class Scored
{
    /// <summary>"C4 D4:2 -:1 Eb4": notes and rests with beats, without bar lines.</summary>
    internal static PartNote[] Line(string text, Func<PartNote, PartNote>? change = null)
    {
        List<PartNote> notes = [];
        Beats at = Beats.Zero;
        foreach (string[] halves in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => word.Split(':')))
        {
            Beats length = Beats.Zero;
            Assert.True(BeatsText.TryParse(halves.Length == 2 ? halves[1] : "1", out length));
            (string[] pitches, long bar) = (halves[0].Split('+'), at.Ticks / (4 * Beats.TicksPerBeat));
            foreach ((int index, string pitch) in pitches.Index().Where(pitch => pitch.Item != "-"))
            {
                PartNote note = new(Pitch.Parse(pitch), Pitch.Parse(pitch).Midi, (int)bar, at - Beats.FromBeats(4 * bar), length, 1, "1", index > 0 ? NoteTraits.Chord : 0, null, "");
                notes.Add(change is null ? note : change(note));
            }

            at += length;
        }

        return [.. notes];
    }

    internal static ScorePart Part(string id, string name, string clef, params PartNote[] notes) =>
        new(id, name, notes, [.. Enumerable.Range(1, 1 + notes.Select(note => note.Bar).DefaultIfEmpty().Max()).Select(bar => $"{bar}")], [], clef.Length == 0 ? [] : [clef], 0, 0);

    /// <summary>Looked at in every way, for one part with the range of a soprano.</summary>
    internal static ScoreLook Looked(Score score)
    {
        Part soprano = new("soprano", "Soprano", [], [], 10, 0, new(new(Pitch.Parse("C4"), Pitch.Parse("G5")), new(Pitch.Parse("C4"), Pitch.Parse("F5"))));
        return ScoreLook.Of(score, ScoreMap.Guess(score, [soprano]), LookQuestion.Plain);
    }

    internal static Score Of(params ScorePart[] parts)
    {
        int bars = parts.Max(part => part.BarNumbers.Count);
        return new()
        {
            Title = "Ferry song",
            Parts = parts,
            Bars = [.. Enumerable.Range(0, bars).Select(bar => new ScoreBar($"{bar + 1}", Beats.FromBeats(4 * bar), Beats.FromBeats(4), null))],
            Tempos = [new(0, Beats.Zero, Tempo.FromBeatsPerMinute(60))],
        };
    }
}
