using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Sounding;

/// <summary>
/// Lays a row of chords under the hands so that no voice runs in octaves or fifths with the choir and every voice goes a short way:
/// of all grips of all chords the row that costs least (<see cref="Motion"/>).
/// </summary>
internal static class VoiceLeading
{
    /// <param name="harmony">The chords, from beat 0.</param>
    /// <param name="rung">Their key.</param>
    /// <param name="lines">What is sung over them.</param>
    internal static IReadOnlyList<VoicedChord> Of(IReadOnlyList<HarmonyChord> harmony, Rung rung, IReadOnlyList<LineInKey> lines)
    {
        IReadOnlyList<Grip>[] choices = [.. harmony.Select((chord, i) => GripBook.For(chord, rung, mayInvert: i > 0 && i < harmony.Count - 1))];
        Beats[] starts = Starts(harmony);
        int[] cost = [.. choices[0].Select(Motion.Place)];
        List<int[]> came = [];
        for (int i = 1; i < choices.Length; i++)
        {
            (int From, int To)[] moves = [.. Moves(lines, starts[i])];
            (cost, int[] from) = Step(cost, choices[i - 1], choices[i], moves);
            came.Add(from);
        }

        int last = Array.IndexOf(cost, cost.Min());
        VoicedChord[] voiced = new VoicedChord[choices.Length];
        for (int i = choices.Length - 1; i >= 0; i--)
        {
            voiced[i] = new(choices[i][last], starts[i], harmony[i].Length);
            last = i > 0 ? came[i - 1][last] : last;
        }

        return voiced;
    }

    /// <summary>The cheapest way to each grip of a chord, and the grip before it on that way.</summary>
    private static (int[] Cost, int[] From) Step(int[] cost, IReadOnlyList<Grip> before, IReadOnlyList<Grip> after, (int From, int To)[] moves)
    {
        int[] total = new int[after.Count];
        int[] from = new int[after.Count];
        for (int to = 0; to < after.Count; to++)
        {
            int[] ways = [.. before.Select((grip, i) => cost[i] + Motion.Between(grip, after[to], moves))];
            total[to] = ways.Min() + Motion.Place(after[to]);
            from[to] = Array.IndexOf(ways, ways.Min());
        }

        return (total, from);
    }

    private static Beats[] Starts(IReadOnlyList<HarmonyChord> harmony)
    {
        Beats start = Beats.Zero;
        Beats[] starts = new Beats[harmony.Count];
        for (int i = 0; i < harmony.Count; i++)
        {
            starts[i] = start;
            start += harmony[i].Length;
        }

        return starts;
    }

    private static IEnumerable<(int From, int To)> Moves(IReadOnlyList<LineInKey> lines, Beats at)
    {
        foreach (LineInKey line in lines)
        {
            if (line.Before(at) is { } from && line.At(at) is { } to && from != to)
            {
                yield return (from, to);
            }
        }
    }
}
