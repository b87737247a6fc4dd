using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tui.Presentation;

/// <summary>
/// A word to the director, in as many rows as it takes: what to do about voices or the log is not cut. Without one, what sounds,
/// in one row.
/// </summary>
internal static class NoticePanel
{
    private static readonly string CutKey = KeyTable.Rows.First(row => row.Action == LiveAction.TakeCut).Label;
    private static readonly TimeSpan Fresh = TimeSpan.FromSeconds(10);

    /// <summary>The rows it takes on a screen of this height, at least one.</summary>
    internal static IReadOnlyList<Block> Blocks(ScreenModel model, int width, int height)
    {
        (string text, Ink ink) = News(model) ?? (Sound(model, width), Ink.Faint);
        Block[] blocks = [.. Block.Paragraph(text, width, Math.Max(1, height / 4), ink)];
        return blocks.Length > 0 ? blocks : [Block.Line("", ink)];
    }

    /// <summary>What was said a moment ago, or is still wrong; null when there is nothing new.</summary>
    internal static (string Text, Ink Ink)? News(ScreenModel model) => model switch
    {
        { CurrentNotice: { IsTrouble: true } trouble } => (trouble.Text, Ink.Alert),
        { CurrentNotice: { } notice } when model.Now - notice.At < Fresh => (notice.Text, Ink.Strong),
        { Status.LogInTrouble: true } => (model.Status.Log, Ink.Alert),
        _ => Offer(model) is { } offer ? (offer, Ink.Strong) : null,
    };

    /// <summary>What could be cut when it runs late, and the key that does.</summary>
    private static string? Offer(ScreenModel model) => LiveCuts.Offer(model.Session, model.Now) is { } cut
        ? ScreenTexts.Of(ScreenTexts.CutOffered, ScreenTexts.Clock(LiveCuts.Delay(model.Session, model.Now)), CutKey, LiveCuts.Words(model.Session, cut))
        : null;

    /// <summary>Whole before the start; later its first sentence, as nothing new is in the rest.</summary>
    private static string Sound(ScreenModel model, int width)
    {
        string port = $"{model.Status.Port} {model.Status.Hands}".TrimEnd();
        if (CellText.Columns(port) <= width || model.Session.State == LiveState.Ready)
        {
            return port;
        }

        int[] ends = [port.IndexOf(". ", StringComparison.Ordinal), port.IndexOf(" (", StringComparison.Ordinal)];
        int end = ends.Where(at => at > 0).DefaultIfEmpty(port.Length).Min();
        return CellText.Fit(port[..end], width - ScreenTexts.HelpSaysMore.Length - 2) + ". " + ScreenTexts.HelpSaysMore;
    }
}
