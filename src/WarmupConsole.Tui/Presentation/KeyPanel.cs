using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Tui.Presentation;

/// <summary>The key in letters as large as there is room for.</summary>
internal static class KeyPanel
{
    /// <summary>Among these is the widest usual key: all are drawn at the scale that it needs, so that the letters do not jump in size.</summary>
    private static readonly Pitch[] Wide = [new(Step.A, 1, 4), new(Step.G, 1, 4)];

    /// <summary>Draws, and returns what is left below.</summary>
    internal static Pane Draw(Pane pane, ScreenModel model)
    {
        if (model.Shown is not { } rung)
        {
            return pane;
        }

        int rows = Math.Max(1, pane.Height - PartsPanel.Rows(model) - 1);
        string widest = Wide.Select(key => model.Notes.WriteName(key).ToUpperInvariant()).MaxBy(name => BlockLetters.Columns(name, 1))!;
        int scale = BlockLetters.ScaleFor(widest, pane.Width, rows);
        Pane room = pane.Sub(0, 0, Math.Max(BlockLetters.Columns(widest, scale), pane.Width), Math.Max(1, BlockLetters.Rows(scale)));
        int used = BlockLetters.Draw(room, Large(model), Ink.Key);
        pane.WriteFit(0, used, Caption(model, pane.Width), Ink.Strong);
        return pane.From(used + (pane.Height - used > PartsPanel.Rows(model) + 1 ? 2 : 1));
    }

    /// <summary>The key as the large letters spell it, which are all capitals.</summary>
    internal static string Large(ScreenModel model) => model.Shown is { } rung ? model.Notes.WriteName(rung.Tonic).ToUpperInvariant() : "";

    internal static string KeyName(ScreenModel model) =>
        model.Shown is { } rung ? $"{model.Notes.WriteName(rung.Tonic)} {MusicWords.Lower(rung.Mode)}" : "";

    /// <summary>Where there is no room for all, the count stays whole and the name of the key is shortened: it stands above in large letters.</summary>
    private static string Caption(ScreenModel model, int columns)
    {
        (int number, int count) = (model.ShownIndex + 1, model.Session.Rungs.Count);
        string whole = ScreenTexts.Of(model.IsBetweenKeys ? ScreenTexts.NextKeyOf : ScreenTexts.KeyOf, KeyName(model), number, count);
        string tail = ScreenTexts.Of(ScreenTexts.KeyCount, number, count);
        return CellText.Columns(whole) <= columns ? whole : CellText.Fit(KeyName(model), columns - tail.Length) + tail;
    }
}
