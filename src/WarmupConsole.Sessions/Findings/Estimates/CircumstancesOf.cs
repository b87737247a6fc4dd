using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// When a weak pitch is worse: among the rungs that hold it, those with one vowel (or loudness, length of note, third of the warm-up) against the
/// others, session by session. The questions asked of one finding share one allowance for error (Holm, 1979).
/// </summary>
internal static class CircumstancesOf
{
    private const double Allowance = 0.05;
    private const int LeastExposed = 6;

    internal static IReadOnlyList<Circumstance> Pitch(Exposures exposures, int pitch, AspectOf values, IReadOnlySet<int> marked)
    {
        (int Row, ExposureRow Of, ExposedPitch Pitch)[] rows =
        [
            .. exposures.Rows.Index().Where(row => row.Item.Line.Has(pitch))
                .Select(row => (row.Index, row.Item, row.Item.Line.Pitches.First(one => one.Midi == pitch))),
        ];
        List<Circumstance> asked = [];
        foreach (Aspect aspect in (Aspect[])[Aspect.Vowel, Aspect.Loudness, Aspect.Length, Aspect.Minute])
        {
            var valued = rows.Select(row => (row.Row, row.Of.Session, Value: values.Value(aspect, row.Of.Rung, row.Pitch))).Where(row => row.Value.Length > 0).ToArray();
            asked.AddRange(valued.Select(row => row.Value).Distinct().Order(StringComparer.Ordinal).Select(value => Ask(aspect, value, valued, marked)).OfType<Circumstance>());
        }

        return Holm(asked);
    }

    private static Circumstance? Ask(Aspect aspect, string value, (int Row, int Session, string Value)[] rows, IReadOnlySet<int> marked)
    {
        (int There, int Otherwise) exposed = (rows.Count(row => row.Value == value), rows.Count(row => row.Value != value));
        if (exposed.There < LeastExposed || exposed.Otherwise < LeastExposed)
        {
            return null;
        }

        int hits = rows.Count(row => row.Value == value && marked.Contains(row.Row));
        int others = rows.Count(row => row.Value != value && marked.Contains(row.Row));
        Stratum[] strata = [.. rows.GroupBy(row => row.Session).Select(session => new Stratum(
            session.Count(),
            session.Count(row => row.Value == value),
            session.Count(row => marked.Contains(row.Row)),
            session.Count(row => row.Value == value && marked.Contains(row.Row))))];
        return new(aspect, value, Rate.Of(hits, exposed.There), Rate.Of(others, exposed.Otherwise), StratifiedTest.PValue(strata));
    }

    private static Circumstance[] Holm(List<Circumstance> asked)
    {
        Circumstance[] ordered = [.. asked.OrderBy(circumstance => circumstance.Chance)];
        return [.. ordered.TakeWhile((circumstance, rank) => circumstance.Chance <= Allowance / (ordered.Length - rank))];
    }
}
