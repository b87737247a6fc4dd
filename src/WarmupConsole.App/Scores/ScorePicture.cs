using System.Text;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.App.Scores;

/// <summary>Bars across, parts down: the denser a cell, the harder. Eighty columns are enough for any score.</summary>
internal static class ScorePicture
{
    private const int NameColumns = 12;
    private const int MostCells = 66;
    private const int BetweenNumbers = 8;
    private const string Cells = "·░▒▓█";

    internal static string Write(Score score, ScoreLook look)
    {
        BarGroups groups = BarGroups.Of(score, MostCells);
        double hardest = BarGroups.Hardest(look);
        StringBuilder text = new();
        text.Append(Margin("")).Append(Numbers(score, groups)).Append('\n');
        foreach (LineLook line in look.Lines)
        {
            IEnumerable<char> cells = Enumerable.Range(0, groups.Starts.Count).Select(group => Cells[BarGroups.Shade(groups.Points(line, group), hardest)]);
            text.Append(Margin(line.Line.Title)).Append([.. cells]).Append('\n');
        }

        return text.Append(Margin("")).Append(ScoreTexts.PictureLegend(groups.BarsInEach)).Append('\n').ToString();
    }

    private static string Margin(string name)
    {
        string fitted = CellText.Fit(CellText.Clean(name), NameColumns);
        return fitted + new string(' ', NameColumns + 1 - CellText.Columns(fitted));
    }

    /// <summary>The printed number of every eighth group, where it fits.</summary>
    private static string Numbers(Score score, BarGroups groups)
    {
        StringBuilder row = new();
        for (int group = 0; group < groups.Starts.Count; group += BetweenNumbers)
        {
            string number = CellText.Fit(CellText.Clean(score.Bars[groups.Starts[group]].Number), BetweenNumbers - 1);
            row.Append(' ', Math.Max(0, group - row.Length)).Append(number);
        }

        return row.ToString();
    }
}
