using System.Globalization;
using System.Text;
using WarmupConsole.App.Reports;
using WarmupConsole.Music.Repertoire.Places;

namespace WarmupConsole.App.Scores;

/// <summary>
/// The hard places as one page that needs nothing else: no script, no network. In the picture a bar is the higher and the darker the
/// harder it is, and what it shows also stands in words.
/// </summary>
internal static class ScorePage
{
    private const int MostGroups = 240;
    private const int Height = 28;
    private const int LeftMargin = 110;
    private const int Width = 960;

    /// <param name="score">The score with its choir.</param>
    /// <param name="look">Its hard places.</param>
    /// <param name="text">Its words.</param>
    internal static string Write(OpenedScore score, ScoreLook look, LookText text)
    {
        string title = ScoreTexts.PageTitle(score.Title, score.Folder.Choir.Name);
        StringBuilder page = new();
        page.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        page.Append($"<title>{SeasonPage.Text(title)}</title>\n<style>\n{SeasonPage.Style}\n</style>\n</head>\n<body>\n<main>\n<h1>{SeasonPage.Text(title)}</h1>\n");
        page.AppendJoin("", text.Head().Select(Paragraph)).Append(Picture(score, look));
        foreach (LineLook line in look.Lines)
        {
            page.Append("<section>\n").AppendJoin("", text.Facts(line).Select((fact, index) => index == 0 ? $"<h2>{SeasonPage.Text(fact)}</h2>\n" : Paragraph(fact)));
            page.Append(line.Passages.Count == 0 ? Paragraph(ScoreTexts.NoPassages) : $"<ol>\n{string.Concat(line.Passages.Select(passage => $"<li>{SeasonPage.Text(text.Passage(passage))}</li>\n"))}</ol>\n").Append("</section>\n");
        }

        return page.Append("</main>\n</body>\n</html>\n").ToString();
    }

    private static string Paragraph(string text) => $"<p>{SeasonPage.Text(text)}</p>\n";

    private static string Picture(OpenedScore score, ScoreLook look)
    {
        BarGroups groups = BarGroups.Of(score.Score, MostGroups);
        double hardest = BarGroups.Hardest(look);
        double step = (Width - LeftMargin) / (double)Math.Max(1, groups.Starts.Count);
        StringBuilder svg = new();
        svg.Append(CultureInfo.InvariantCulture, $"<figure>\n<svg viewBox=\"0 0 {Width} {(look.Lines.Count + 1) * Height}\" role=\"img\" aria-label=\"{SeasonPage.Text(ScoreTexts.PictureLegend(groups.BarsInEach))}\">\n");
        foreach ((int row, LineLook line) in look.Lines.Index())
        {
            int foot = (row + 1) * Height;
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"0\" y=\"{foot - 6}\">{SeasonPage.Text(line.Line.Title)}</text>\n");
            for (int group = 0; group < groups.Starts.Count; group++)
            {
                double points = groups.Points(line, group);
                svg.Append(points <= 0 ? "" : Cell((LeftMargin + (group * step), foot, step), points / hardest, ScoreTexts.CellTitle(line.Line.Title, score.Score.Bars[groups.Starts[group]].Number, points)));
            }
        }

        for (int group = 0; group < groups.Starts.Count; group += Math.Max(1, groups.Starts.Count / 12))
        {
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{LeftMargin + (group * step):0.#}\" y=\"{((look.Lines.Count + 1) * Height) - 8}\">{SeasonPage.Text(score.Score.Bars[groups.Starts[group]].Number)}</text>\n");
        }

        return svg.Append($"</svg>\n<figcaption>{SeasonPage.Text(ScoreTexts.PageLegend(groups.BarsInEach))}</figcaption>\n</figure>\n").ToString();
    }

    private static string Cell((double X, int Foot, double Width) at, double share, string title)
    {
        int grey = (int)Math.Round(210 - (190 * share));
        double height = 2 + ((Height - 8) * share);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"<rect x=\"{at.X:0.##}\" y=\"{at.Foot - height:0.##}\" width=\"{at.Width * 0.9:0.##}\" height=\"{height:0.##}\" fill=\"rgb({grey},{grey},{grey})\"><title>{SeasonPage.Text(title)}</title></rect>\n");
    }
}
