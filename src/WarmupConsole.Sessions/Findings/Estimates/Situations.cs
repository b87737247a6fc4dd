using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Rows of one part that are alike in every aspect (the same line at the same tempo in the same third of the warm-up), counted together.</summary>
internal sealed class Situations
{
    private readonly int[] ofRow;
    private readonly List<ExposureRow> examples = [];
    private readonly List<int> counts = [];

    internal Situations(Exposures exposures, AspectOf values)
    {
        (Exposures, Values, ofRow) = (exposures, values, new int[exposures.Rows.Length]);
        Dictionary<(int Cell, int MilliBpm, int Third), int> known = [];
        for (int row = 0; row < ofRow.Length; row++)
        {
            ExposureRow one = exposures.Rows[row];
            (int, int, int) alike = (one.Cell, one.MilliBpm, values.ThirdOf(one));
            if (!known.TryGetValue(alike, out int situation))
            {
                known.Add(alike, situation = counts.Count);
                examples.Add(one);
                counts.Add(0);
            }

            ofRow[row] = situation;
            counts[situation]++;
        }
    }

    internal Exposures Exposures { get; }

    internal AspectOf Values { get; }

    /// <summary>A row of each situation.</summary>
    internal IReadOnlyList<ExposureRow> Examples => examples;

    /// <summary>For each situation, how often it was sung.</summary>
    internal IReadOnlyList<int> Counts => counts;

    /// <summary>The situations with a pitch, and how it is sung there.</summary>
    internal IEnumerable<(int Situation, ExposedPitch Pitch)> With(int pitch)
    {
        for (int situation = 0; situation < examples.Count; situation++)
        {
            ExposedLine line = Exposures.Lines[examples[situation].Cell];
            if (line.Has(pitch))
            {
                yield return (situation, line.Pitches.First(one => one.Midi == pitch));
            }
        }
    }

    /// <summary>The situation of a row.</summary>
    internal int Of(int row) => ofRow[row];
}
