using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tui.Presentation;

/// <summary>The keys, as many as there is room for; what would do nothing now stands in brackets and dim.</summary>
internal static class FooterPanel
{
    private const int Gap = 2;
    private const int Staying = 2;

    /// <summary>Rows for all keys with all brackets, so that nothing above jumps when keys come and go.</summary>
    internal static int Rows(int width, int height)
    {
        int most = height switch { < 20 => 1, < 24 => 2, _ => 3 };
        KeyHint[] all = [.. KeyTable.Rows.Where(row => row.WorksWith(lineOpen: false)).Select(row => new KeyHint(row, ""))];
        return Math.Min(most, Flow(Shown(all), width)[^1].Row + 1);
    }

    internal static void Draw(Pane pane, ScreenModel model)
    {
        foreach ((KeyHint hint, int x, int row) in Flow(Fitting(Hints(model), pane.Width, pane.Height), pane.Width))
        {
            bool works = hint.WhyNot is null;
            int after = pane.Write(x, row, hint.Row.Label, works ? Ink.Strong : Ink.Faint);
            pane.Write(after + 1, row, Text(hint), works ? Ink.Plain : Ink.Faint);
        }
    }

    private static IReadOnlyList<KeyHint> Hints(ScreenModel model) =>
        Shown(model.Keys.Where(hint => hint.Row.WorksWith(model.Line.IsOpen || model.Prompt is not null) && (hint.WhyNot is null || IsLed(model.Session.State))));

    /// <summary>Before and after the steps few keys work, and only these are shown; while a step is led all keep their places.</summary>
    private static bool IsLed(LiveState state) => state is not (LiveState.Ready or LiveState.Finished);

    /// <summary>An action with two keys is shown with its first.</summary>
    private static IReadOnlyList<KeyHint> Shown(IEnumerable<KeyHint> hints) =>
        [.. hints.DistinctBy(hint => (hint.Row.Action, hint.Row.Command))];

    /// <summary>Leaves keys out, from the end, until the rest fits; the last ones stay: the way out, and the page with all the others.</summary>
    private static List<KeyHint> Fitting(IReadOnlyList<KeyHint> hints, int width, int rows)
    {
        List<KeyHint> kept = [.. hints];
        while (kept.Count > Staying && Flow(kept, width)[^1].Row >= rows)
        {
            kept.RemoveAt(kept.Count - 1 - Staying);
        }

        return kept;
    }

    private static List<(KeyHint Hint, int X, int Row)> Flow(IReadOnlyList<KeyHint> hints, int width)
    {
        List<(KeyHint Hint, int X, int Row)> places = [];
        (int x, int row) = (0, 0);
        foreach (KeyHint hint in hints)
        {
            int columns = CellText.Columns(hint.Row.Label) + 1 + CellText.Columns(Text(hint));
            (x, row) = x > 0 && x + columns > width ? (0, row + 1) : (x, row);
            places.Add((hint, x, row));
            x += columns + Gap;
        }

        return places;
    }

    private static string Text(KeyHint hint) => hint.WhyNot is null ? hint.Row.Brief : $"({hint.Row.Brief})";
}
