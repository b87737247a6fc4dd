using System.Globalization;
using System.Text;

namespace WarmupConsole.App.Reports;

/// <summary>
/// Rates beside each other: a point for the share, a line for its interval, below it what it is and how often it was sung. Every number also
/// stands in the description and in a table under the chart.
/// </summary>
internal static class RateChart
{
    private const int Left = 48;
    private const int Top = 10;
    private const int Height = 140;
    private const int Labels = 34;
    private const int Widest = 800;
    private const int Column = 44;

    /// <param name="name">What is shown, with a colon behind it: "altos flat on A4, session by session".</param>
    /// <param name="caption">How to read it.</param>
    /// <param name="head">What the points differ in.</param>
    /// <param name="points">At least one.</param>
    internal static string Write(string name, string caption, string head, IReadOnlyList<ChartPoint> points)
    {
        double column = Math.Min(Column, (Widest - Left) / (double)points.Count);
        int width = Left + (int)(points.Count * column) + 10;
        StringBuilder svg = new();
        svg.Append(CultureInfo.InvariantCulture, $"<figure>\n<svg viewBox=\"0 0 {width} {Top + Height + Labels}\" width=\"{width}\" role=\"img\" aria-label=\"{SeasonPage.Text(Described(name, points))}\">\n");
        foreach (int percent in (int[])[0, 25, 50, 75, 100])
        {
            svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{Left}\" x2=\"{width}\" y1=\"{Y(percent / 100.0)}\" y2=\"{Y(percent / 100.0)}\" stroke=\"#ccc\"/><text x=\"{Left - 6}\" y=\"{Y((percent - 3) / 100.0)}\" text-anchor=\"end\">{percent} %</text>\n");
        }

        int every = (int)Math.Ceiling(Column / column);
        foreach ((int index, ChartPoint point) in points.Index())
        {
            Point(svg, Left + ((index + 0.5) * column), point, index % every == 0);
        }

        return svg.Append($"</svg>\n<figcaption>{SeasonPage.Text(caption)}</figcaption>\n{Table(name, head, points)}</figure>\n").ToString();
    }

    private static void Point(StringBuilder svg, double x, ChartPoint point, bool isLabelled)
    {
        string fill = point.IsMeant ? "#111" : "#fff";
        svg.Append(CultureInfo.InvariantCulture, $"<line x1=\"{x:0.#}\" x2=\"{x:0.#}\" y1=\"{Y(point.Rate.Low)}\" y2=\"{Y(point.Rate.High)}\" stroke=\"#333\" stroke-width=\"2\"/><circle cx=\"{x:0.#}\" cy=\"{Y(point.Rate.Share)}\" r=\"5\" fill=\"{fill}\" stroke=\"#111\" stroke-width=\"2\"/>");
        svg.Append(isLabelled ? string.Create(CultureInfo.InvariantCulture, $"<text x=\"{x:0.#}\" y=\"{Top + Height + 15}\" text-anchor=\"middle\">{SeasonPage.Text(point.Label)}</text><text x=\"{x:0.#}\" y=\"{Top + Height + 29}\" text-anchor=\"middle\">{point.Rate.Exposed:0}</text>\n") : "\n");
    }

    /// <summary>The chart for who cannot see it: the same numbers in one sentence.</summary>
    private static string Described(string name, IReadOnlyList<ChartPoint> points) => $"{name}: " + string.Join(", ", points.Select(point => string.Create(
        CultureInfo.InvariantCulture, $"{point.Words} {point.Rate.Marked:0.#} of {point.Rate.Exposed:0}")));

    private static string Table(string name, string head, IReadOnlyList<ChartPoint> points)
    {
        StringBuilder table = new($"<details>\n<summary>The numbers</summary>\n<table>\n<caption>{SeasonPage.Text(name)}</caption>\n<tr><th scope=\"col\">{SeasonPage.Text(head)}</th><th scope=\"col\">marked</th><th scope=\"col\">sung</th><th scope=\"col\">share</th><th scope=\"col\">90 % interval</th></tr>\n");
        foreach (ChartPoint point in points)
        {
            table.Append(
                CultureInfo.InvariantCulture,
                $"<tr><th scope=\"row\">{SeasonPage.Text(point.Words)}</th><td>{point.Rate.Marked:0.#}</td><td>{point.Rate.Exposed:0}</td><td>{100 * point.Rate.Share:0} %</td><td>{100 * point.Rate.Low:0} to {100 * point.Rate.High:0} %</td></tr>\n");
        }

        return table.Append("</table>\n</details>\n").ToString();
    }

    private static string Y(double share) => (Top + ((1 - share) * Height)).ToString("0.#", CultureInfo.InvariantCulture);
}
