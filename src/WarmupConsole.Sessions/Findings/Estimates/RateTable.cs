using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Marked ÷ exposed in every aspect. A rung counts once for each value that any of its pitches has.</summary>
internal static class RateTable
{
    internal static IEnumerable<RateRow> Of(Part part, History history)
    {
        if (history.Exposures.Rows.Count == 0)
        {
            yield break;
        }

        AspectOf values = new(part.Range.Comfortable, history.Exposures.Rows.Max(row => row.Rung.Minute));
        foreach (Aspect aspect in Enum.GetValues<Aspect>())
        {
            string[][] ofRow = [.. history.Exposures.Rows.Select(row => Values(values, aspect, row))];
            Dictionary<string, int> exposed = ofRow.SelectMany(row => row).CountBy(value => value).ToDictionary();
            foreach ((string kind, _, IReadOnlyList<PartMark> marks) in history.Kinds)
            {
                foreach (RateRow row in Kind((part.Id, kind, aspect), marks, ofRow, exposed))
                {
                    yield return row;
                }
            }
        }
    }

    private static IEnumerable<RateRow> Kind((string Part, string Kind, Aspect Aspect) what, IReadOnlyList<PartMark> marks, string[][] ofRow, Dictionary<string, int> exposed)
    {
        Dictionary<string, double> marked = [];
        foreach ((PartMark mark, MarkedRow row) in marks.SelectMany(mark => mark.Candidates.Select(row => (mark, row))))
        {
            foreach (string value in ofRow[row.Row])
            {
                marked[value] = marked.GetValueOrDefault(value) + (mark.Share * row.Weight);
            }
        }

        return exposed.OrderBy(value => value.Key, StringComparer.Ordinal).Select(value =>
            new RateRow(what.Part, what.Kind, what.Aspect, value.Key, Rate.Of(Math.Min(value.Value, marked.GetValueOrDefault(value.Key)), value.Value)));
    }

    private static string[] Values(AspectOf values, Aspect aspect, ExposureRow row) =>
        [.. row.Line.Pitches.Select(pitch => values.Value(aspect, row.Rung, pitch)).Where(value => value.Length > 0).Distinct()];
}
