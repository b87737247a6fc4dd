using System.Globalization;
using System.Text;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.App.Reports;

/// <summary>A finding from session to session: a point for the share, a line for its interval.</summary>
internal static class SharesChart
{
    private const int Left = 48;
    private const int Top = 10;
    private const int Height = 140;
    private const int Column = 44;
    private const int Labels = 34;

    internal static string Write(Finding finding, string title)
    {
        int width = Left + (finding.Sessions.Count * Column) + 10;
        StringBuilder svg = new();
        svg.Append(CultureInfo.InvariantCulture, $"<figure>\n<svg viewBox=\"0 0 {width} {Top + Height + Labels}\" width=\"{width}\" role=\"img\" aria-label=\"{SeasonPage.Text(Described(finding, title))}\">\n");
        foreach (int percent in (int[])[0, 25, 50, 75, 100])
        {
            svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{Left}\" x2=\"{width}\" y1=\"{Y(percent / 100.0)}\" y2=\"{Y(percent / 100.0)}\" stroke=\"#ccc\"/><text x=\"{Left - 6}\" y=\"{Y((percent - 3) / 100.0)}\" text-anchor=\"end\">{percent} %</text>\n");
        }

        foreach ((int index, SessionShare session) in finding.Sessions.Index())
        {
            Session(svg, Left + (index * Column) + (Column / 2), session);
        }

        return svg.Append("</svg>\n<figcaption>Share of the times it was sung that are put down to this pitch; the lines are 90 % intervals, the numbers below the date the times sung.</figcaption>\n</figure>\n").ToString();
    }

    private static void Session(StringBuilder svg, int x, SessionShare session)
    {
        Rate rate = Rate.Of(Math.Min(session.Exposed, session.Blamed), session.Exposed);
        svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{x}\" x2=\"{x}\" y1=\"{Y(rate.Low)}\" y2=\"{Y(rate.High)}\" stroke=\"#333\" stroke-width=\"2\"/><circle cx=\"{x}\" cy=\"{Y(rate.Share)}\" r=\"5\" fill=\"#111\"/>");
        svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{x}\" y=\"{Top + Height + 15}\" text-anchor=\"middle\">{session.Start:d/M}</text><text x=\"{x}\" y=\"{Top + Height + 29}\" text-anchor=\"middle\">{session.Exposed}</text>\n");
    }

    /// <summary>The chart for who cannot see it: the same numbers in one sentence.</summary>
    private static string Described(Finding finding, string title) => $"{title}, session by session: " + string.Join(", ", finding.Sessions.Select(session => string.Create(
        CultureInfo.InvariantCulture, $"{session.Start:d MMMM} {session.Blamed:0.#} of {session.Exposed}")));

    private static string Y(double share) => (Top + ((1 - share) * Height)).ToString("0.#", CultureInfo.InvariantCulture);
}
