using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Planning;

/// <summary>The keys that work now, as many as there is room for; the way out and the page of keys always.</summary>
internal static class PlanFooter
{
    private const int Gap = 2;
    private const int Staying = 2;

    internal static int Rows(PlanMode mode, int width, int height) => Math.Min(height < 24 ? 1 : 2, Flow(Of(mode), width)[^1].Row + 1);

    internal static void Draw(Pane pane, PlanMode mode)
    {
        List<PlanKeyRow> kept = [.. Of(mode)];
        while (kept.Count > Staying && Flow(kept, pane.Width)[^1].Row >= pane.Height)
        {
            kept.RemoveAt(kept.Count - 1 - Staying);
        }

        foreach ((PlanKeyRow key, int x, int row) in Flow(kept, pane.Width))
        {
            int after = pane.Write(x, row, key.Label, Ink.Strong);
            pane.Write(after + 1, row, key.Brief);
        }
    }

    private static IReadOnlyList<PlanKeyRow> Of(PlanMode mode) => [.. PlanKeys.Rows.Where(row => row.Modes.Contains(mode))];

    private static List<(PlanKeyRow Key, int X, int Row)> Flow(IReadOnlyList<PlanKeyRow> keys, int width)
    {
        List<(PlanKeyRow Key, int X, int Row)> places = [];
        (int x, int row) = (0, 0);
        foreach (PlanKeyRow key in keys)
        {
            int columns = CellText.Columns(key.Label) + 1 + CellText.Columns(key.Brief);
            (x, row) = x > 0 && x + columns > width ? (0, row + 1) : (x, row);
            places.Add((key, x, row));
            x += columns + Gap;
        }

        return places;
    }
}
