using System.Globalization;
using WarmupConsole.Sessions.Findings;

namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>Each finding from session to session.</summary>
internal static class TrendLines
{
    private const int Bar = 20;
    private const int DayColumns = 13;

    internal static IReadOnlyList<ReviewLine> Of(ReviewModel model, int columns) => model.Findings.Count == 0
        ? [new(ReviewTexts.NoTrends)]
        : [.. ReviewLine.Wrapped(ReviewTexts.TrendHead, columns, Ink.Faint), ReviewLine.Blank, .. model.Findings.SelectMany(finding => Of(finding, model, columns))];

    private static IEnumerable<ReviewLine> Of(Finding finding, ReviewModel model, int columns) =>
    [
        .. ReviewLine.Wrapped(FindingText.Title(finding, model.Choir), columns, Ink.Strong),
        .. ReviewLine.Wrapped(FindingText.Course(finding), columns),
        .. finding.Sessions.Select(session => new ReviewLine(Session(session))),
        ReviewLine.Blank,
    ];

    private static string Session(SessionShare session)
    {
        double share = Math.Min(1, session.Blamed / session.Exposed);
        int full = (int)Math.Round(share * Bar);
        string day = session.Start.ToString("d MMM yyyy", CultureInfo.InvariantCulture).PadRight(DayColumns);
        return string.Create(CultureInfo.InvariantCulture, $"  {day}{new string('█', full)}{new string('·', Bar - full)}  {session.Blamed,4:0.#} of {session.Exposed,3}  {100 * share,3:0} %");
    }
}
