using System.Globalization;
using System.Text;
using WarmupConsole.App.Running;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Findings;

namespace WarmupConsole.App.Reports;

/// <summary>
/// Parts against pitches, as a table: the darker a cell (never too dark for its text), the more of its keys were marked; the numbers stand in it, so that nothing
/// depends on the shade. All kinds of trouble together.
/// </summary>
internal static class HeatMap
{
    internal static string Write(SeasonReview review)
    {
        IReadOnlyList<HeatRow> rows = review.Heat;
        if (rows.Count == 0)
        {
            return "<p>Nothing was marked.</p>\n";
        }

        StringBuilder table = new("<table>\n<caption>Marked of sung, in keys; a mark without a pitch counts for all pitches of its key. * beyond the comfortable range.</caption>\n<tr><th scope=\"col\">Pitch</th>");
        table.AppendJoin("", review.Choir.Parts.Select(part => $"<th scope=\"col\">{SeasonPage.Text(part.Name)}</th>")).Append("</tr>\n");
        foreach (HeatRow row in rows)
        {
            table.Append($"<tr><th scope=\"row\">{SeasonPage.Text(review.Choir.Notes.Write(KeySpelling.TonicFor(row.Midi, Mode.Major)))}</th>");
            table.AppendJoin("", row.Cells.Select(Cell)).Append("</tr>\n");
        }

        return table.Append("</table>\n").ToString();
    }

    private static string Cell(HeatCell? cell)
    {
        if (cell is not { } known)
        {
            return "<td></td>";
        }

        int grey = (int)Math.Round(255 - (105 * Math.Min(1, 2 * known.Share)));
        return string.Create(CultureInfo.InvariantCulture, $"<td style=\"background:rgb({grey},{grey},{grey})\">{known.Marked:0.#} / {known.Sung:0}{(known.IsEasy ? "" : " *")}</td>");
    }
}
