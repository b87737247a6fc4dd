using System.Globalization;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Findings;

/// <summary>Parts against pitches: how many of the keys that hold a pitch were marked.</summary>
public static class HeatTable
{
    /// <summary>The highest pitch first; empty when nothing was marked.</summary>
    public static IReadOnlyList<HeatRow> Of(Choir choir, IReadOnlyList<RateRow> rates)
    {
        ArgumentNullException.ThrowIfNull(choir);
        ArgumentNullException.ThrowIfNull(rates);
        HashSet<string> praise = [.. MarkKindData.Of(choir).DistinctBy(kind => kind.Id).Where(kind => kind.IsPraise).Select(kind => kind.Id)];
        ILookup<(string Part, int Midi), RateRow> cells = rates.Where(row => row.Aspect == Aspect.Pitch && !praise.Contains(row.Kind))
            .ToLookup(row => (row.Part, int.Parse(row.Value, CultureInfo.InvariantCulture)));
        return [.. cells.Select(cell => cell.Key.Midi).Distinct().OrderDescending().Select(midi => new HeatRow(midi, [.. choir.Parts.Select(part => Cell(part, midi, cells))]))];
    }

    private static HeatCell? Cell(Part part, int midi, ILookup<(string Part, int Midi), RateRow> cells)
    {
        RateRow[] kinds = [.. cells[(part.Id, midi)]];
        return kinds.Length == 0 ? null : new HeatCell(kinds.Sum(row => row.Rate.Marked), kinds[0].Rate.Exposed, part.Range.Comfortable.Contains(midi));
    }
}
