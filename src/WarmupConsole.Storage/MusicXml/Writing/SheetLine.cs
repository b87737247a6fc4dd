using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>What a part sings in a key, as written notes and rests that fill every bar.</summary>
internal static class SheetLine
{
    /// <summary>The notes of each bar; none for a bar of rest.</summary>
    internal static IReadOnlyList<IReadOnlyList<SheetNote>> Of(ExerciseSheet sheet, RungPart? part)
    {
        IReadOnlyList<SungTone> tones = part is null ? [] : SungTones.Of(sheet.Exercise, sheet.First!, part);
        List<Stretch> stretches = Stretches(tones, sheet.Length);
        return [.. sheet.Bars.Select(bar => In(bar, stretches))];
    }

    /// <summary>Notes and the rests between them, from the first beat to the last.</summary>
    private static List<Stretch> Stretches(IReadOnlyList<SungTone> tones, Beats length)
    {
        List<Stretch> stretches = [];
        Beats at = Beats.Zero;
        foreach ((int index, SungTone tone) in tones.Index())
        {
            AddRest(stretches, at, tone.Note.Start);
            at = tone.Note.Start + tone.Written.Length;
            stretches.Add(new(tone.Note.Start, at, tone, index + 1 < tones.Count && tones[index + 1].Written.Syllable is null));
        }

        AddRest(stretches, at, length);
        return stretches;
    }

    private static void AddRest(List<Stretch> stretches, Beats from, Beats to)
    {
        if (to > from)
        {
            stretches.Add(new(from, to, null, false));
        }
    }

    private static SheetNote[] In(Bar bar, List<Stretch> stretches) => stretches.Exists(rest => rest.Tone is null && rest.Start <= bar.Start && rest.End >= bar.End)
        ? []
        : [.. stretches.Where(stretch => stretch.Start < bar.End && stretch.End > bar.Start).SelectMany(stretch => Notes(stretch, bar))];

    private static IEnumerable<SheetNote> Notes(Stretch stretch, Bar bar)
    {
        Beats at = stretch.Start > bar.Start ? stretch.Start : bar.Start;
        Beats end = stretch.End < bar.End ? stretch.End : bar.End;
        foreach ((Beats length, NoteValue? value) in NoteValue.Of(end - at))
        {
            bool isFirst = at == stretch.Start;
            yield return new(at, length, value, stretch.Tone?.Pitch)
            {
                IsTiedBack = stretch.Tone is not null && !isFirst,
                IsTiedOn = stretch.Tone is not null && at + length < stretch.End,
                Word = isFirst ? stretch.Tone?.Written.Syllable?.Text : null,
                IsCarried = isFirst && stretch.IsCarried,
            };
            at += length;
        }
    }

    private sealed record Stretch(Beats Start, Beats End, SungTone? Tone, bool IsCarried);
}
