using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Places;

namespace WarmupConsole.App.Scores;

/// <summary>The bars of a score put together until they fit a picture: each group is as hard as its hardest bar.</summary>
/// <param name="Starts">Index of the first bar of each group.</param>
/// <param name="BarsInEach">How many bars, in the last one perhaps fewer.</param>
internal sealed record BarGroups(IReadOnlyList<int> Starts, int BarsInEach)
{
    /// <summary>Shares of the hardest group of all parts from which a shade holds; below the first it is easy.</summary>
    private static readonly double[] Shades = [0.02, 0.15, 0.4, 0.7];

    /// <summary>From easy to hardest.</summary>
    internal static int MostShade => Shades.Length;

    internal static BarGroups Of(Score score, int most)
    {
        int each = Math.Max(1, (score.Bars.Count + most - 1) / most);
        return new([.. Enumerable.Range(0, (score.Bars.Count + each - 1) / each).Select(group => group * each)], each);
    }

    internal double Points(LineLook line, int group) =>
        Enumerable.Range(Starts[group], Math.Min(BarsInEach, line.BarPoints.Count - Starts[group])).Max(bar => line.BarPoints[bar]);

    /// <summary>The hardest bar of all lines; at least 1, so that an easy score stays light.</summary>
    internal static double Hardest(ScoreLook look) => look.Lines.SelectMany(line => line.BarPoints).Append(1).Max();

    /// <summary>0 for easy to <see cref="MostShade"/>.</summary>
    internal static int Shade(double points, double hardest) => Array.FindLastIndex(Shades, share => points >= share * hardest) + 1;
}
