using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Music.Voices;
using WarmupConsole.Music.Writing;

namespace WarmupConsole.Sessions.TakeAlong;

/// <summary>Gathers a piece while it is written, from its beginning to its end.</summary>
internal sealed class PieceNotes(IReadOnlyList<Part> parts)
{
    private readonly List<Placed<Tempo>> tempos = [];
    private readonly List<Placed<Meter>> meters = [];
    private readonly List<Placed<Key>> keys = [];
    private readonly List<Placed<string>> markers = [];
    private readonly List<ScoreNote> piano = [];
    private readonly List<ScoreNote>[] sung = [.. parts.Select(_ => new List<ScoreNote>())];
    private readonly List<Placed<string>>[] words = [.. parts.Select(_ => new List<Placed<string>>())];
    private Beats barsEnd;

    public void Tempo(Beats at, Tempo tempo) => Change(tempos, at, tempo);

    public void Key(Beats at, Key key) => Change(keys, at, key);

    public void Mark(Beats at, string text) => markers.Add(new(at, text));

    /// <summary>A stretch begins on a bar line; where the bar before could not be written exactly, the signature is written again.</summary>
    public void Bars(Beats at, Beats stretch)
    {
        foreach (Bar bar in Bar.Of(stretch))
        {
            Beats start = at + bar.Start;
            if (start != barsEnd || meters.Count == 0 || meters[^1].Value != bar.Meter)
            {
                meters.Add(new(start, bar.Meter));
            }

            barsEnd = start + bar.Meter.Length;
        }
    }

    public void Piano(Beats at, IEnumerable<ScoreNote> notes) => piano.AddRange(notes.Select(note => note with { Start = note.Start + at }));

    /// <summary>Nothing sounds on, and nothing that was written for later is played.</summary>
    public void Silence(Beats at)
    {
        ScoreNote[] cut = [.. piano.Where(note => note.Start + note.Length > at && note.Start < at).Select(note => note with { Length = at - note.Start })];
        piano.RemoveAll(note => note.Start + note.Length > at);
        piano.AddRange(cut);
    }

    public void Sing(Beats at, Exercise exercise, Rung rung)
    {
        foreach ((int index, RungPart part) in rung.Parts.Index())
        {
            foreach (SungTone tone in SungTones.Of(exercise, rung, part))
            {
                ScoreNote note = tone.Note with { Start = tone.Note.Start + at };
                sung[index].Add(note);
                if (tone.Written.Syllable is { } syllable)
                {
                    words[index].Add(new(note.Start, syllable.Text));
                }
            }
        }
    }

    public WrittenPiece Piece(string title, IReadOnlyList<string> remarks, Beats length) => new()
    {
        Title = title,
        Remarks = remarks,
        Tempos = tempos,
        Meters = meters,
        Keys = keys,
        Markers = markers,
        Tracks = [new(TakeAlongTexts.Piano, false, piano, []), .. parts.Select((part, index) => new WrittenTrack(part.Name, true, sung[index], words[index]))],
        Length = length,
    };

    private static void Change<T>(List<Placed<T>> list, Beats at, T value)
        where T : struct, IEquatable<T>
    {
        if (list.Count == 0 || !list[^1].Value.Equals(value))
        {
            list.Add(new(at, value));
        }
    }
}
