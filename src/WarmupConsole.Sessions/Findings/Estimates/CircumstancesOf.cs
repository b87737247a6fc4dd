using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// When a weak pitch is worse: among the rungs that hold it, those with one vowel (or loudness, length of note, third of the warm-up) against the
/// others, session by session. The questions asked of one finding share one allowance for error (Holm, 1979).
/// </summary>
internal sealed class CircumstancesOf
{
    private const double Allowance = 0.05;
    private const int LeastExposed = 6;

    private static readonly Aspect[] Aspects = [Aspect.Vowel, Aspect.Loudness, Aspect.Length, Aspect.Minute];

    private readonly Situations situations;
    private readonly int[] rows;
    private readonly bool[] isMarked;

    /// <summary>The situations with the pitch, and how it is sung there.</summary>
    private readonly (int Situation, ExposedPitch Pitch)[] held;

    private CircumstancesOf(Situations situations, int pitch, int[] rows, int[] marked)
    {
        (this.situations, this.rows, isMarked) = (situations, rows, new bool[rows.Length]);
        held = [.. situations.With(pitch)];
        int next = 0;
        for (int i = 0; i < rows.Length; i++)
        {
            while (next < marked.Length && marked[next] < rows[i])
            {
                next++;
            }

            isMarked[i] = next < marked.Length && marked[next] == rows[i];
        }
    }

    /// <param name="situations">Of the part.</param>
    /// <param name="pitch">MIDI number.</param>
    /// <param name="rows">The rows that hold it, in order.</param>
    /// <param name="marked">The rows that were marked, in order.</param>
    internal static IReadOnlyList<Circumstance> Pitch(Situations situations, int pitch, int[] rows, int[] marked)
    {
        CircumstancesOf circumstances = new(situations, pitch, rows, marked);
        return Holm([.. Aspects.SelectMany(circumstances.Asked).OfType<Circumstance>()]);
    }

    private IEnumerable<Circumstance?> Asked(Aspect aspect)
    {
        string[] ofHeld = [.. held.Select(one => situations.Values.Value(aspect, situations.Examples[one.Situation], one.Pitch))];
        string[] values = [.. ofHeld.Where(value => value.Length > 0).Distinct().Order(StringComparer.Ordinal)];
        int[] ofSituation = new int[situations.Examples.Count];
        for (int i = 0; i < held.Length; i++)
        {
            ofSituation[held[i].Situation] = Array.IndexOf(values, ofHeld[i]);
        }

        return values.Zip(Strata(ofSituation, values.Length), (value, strata) => Ask(aspect, value, strata));
    }

    /// <summary>For each value and evening, how often the pitch was sung and marked under the value, among all that evening's values.</summary>
    /// <param name="ofSituation">For each situation with the pitch, the number of its value; below 0 where it is not known.</param>
    /// <param name="values">How many values there are.</param>
    private Stratum[][] Strata(int[] ofSituation, int values)
    {
        ReadOnlySpan<ExposureRow> all = situations.Exposures.Rows;
        int evenings = rows.Length == 0 ? 0 : all[rows[^1]].Session + 1;
        Stratum[] wholes = new Stratum[evenings];
        Stratum[][] strata = [.. Enumerable.Range(0, values).Select(_ => new Stratum[evenings])];
        for (int i = 0; i < rows.Length; i++)
        {
            if (ofSituation[situations.Of(rows[i])] is >= 0 and int value)
            {
                int evening = all[rows[i]].Session;
                Count(ref wholes[evening], isMarked[i]);
                Count(ref strata[value][evening], isMarked[i]);
            }
        }

        foreach (Stratum[] ofValue in strata)
        {
            for (int evening = 0; evening < evenings; evening++)
            {
                ofValue[evening] = ofValue[evening] with { Size = wholes[evening].Exposed, Marked = wholes[evening].MarkedExposed };
            }
        }

        return strata;
    }

    private static void Count(ref Stratum stratum, bool isMarked) =>
        stratum = stratum with { Exposed = stratum.Exposed + 1, MarkedExposed = stratum.MarkedExposed + (isMarked ? 1 : 0) };

    private static Circumstance? Ask(Aspect aspect, string value, Stratum[] strata)
    {
        (int there, int hits) = (strata.Sum(stratum => stratum.Exposed), strata.Sum(stratum => stratum.MarkedExposed));
        (int otherwise, int others) = (strata.Sum(stratum => stratum.Size) - there, strata.Sum(stratum => stratum.Marked) - hits);
        return there < LeastExposed || otherwise < LeastExposed
            ? null
            : new(aspect, value, Rate.Of(hits, there), Rate.Of(others, otherwise), StratifiedTest.PValue(strata));
    }

    private static Circumstance[] Holm(Circumstance[] asked)
    {
        Circumstance[] ordered = [.. asked.OrderBy(circumstance => circumstance.Chance)];
        return [.. ordered.TakeWhile((circumstance, rank) => circumstance.Chance <= Allowance / (ordered.Length - rank))];
    }
}
