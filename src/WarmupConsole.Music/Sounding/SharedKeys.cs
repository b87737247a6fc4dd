using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Sounding;

/// <summary>Several lines on one piano: where they meet on a key it is struck again, and then held as long as the longest of them.</summary>
internal static class SharedKeys
{
    internal static List<ScoreNote> Restruck(IEnumerable<ScoreNote> lines) =>
        [.. lines.GroupBy(note => note.Midi).SelectMany(OneKey).OrderBy(note => note.Start)];

    private static List<ScoreNote> OneKey(IEnumerable<ScoreNote> notes)
    {
        List<ScoreNote> struck = [];
        foreach (ScoreNote note in notes.OrderBy(note => note.Start))
        {
            ScoreNote next = note;
            if (struck.Count > 0 && struck[^1] is var before && before.Start + before.Length > note.Start)
            {
                Beats end = Later(before.Start + before.Length, note.Start + note.Length);
                next = note with { Length = end - note.Start, Velocity = before.Start == note.Start ? Math.Max(before.Velocity, note.Velocity) : note.Velocity };
                struck[^1] = before with { Length = note.Start - before.Start };
            }

            struck.Add(next);
        }

        return [.. struck.Where(note => note.Length > Beats.Zero)];
    }

    private static Beats Later(Beats a, Beats b) => a > b ? a : b;
}
