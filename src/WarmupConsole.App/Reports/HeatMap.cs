using System.Globalization;
using System.Text;
using WarmupConsole.App.Running;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings;

namespace WarmupConsole.App.Reports;

/// <summary>
/// Parts against pitches, as a table: the darker a cell, the more of its keys were marked; the numbers stand in it, so that nothing
/// depends on the shade. All kinds of trouble together.
/// </summary>
internal static class HeatMap
{
    internal static string Write(SeasonReview review)
    {
        ILookup<(string Part, string Midi), RateRow> cells = review.Rates.Where(row => row.Aspect == Aspect.Pitch && !review.IsPraise(row.Kind)).ToLookup(row => (row.Part, row.Value));
        int[] pitches = [.. cells.Select(cell => int.Parse(cell.Key.Midi, CultureInfo.InvariantCulture)).Distinct().OrderDescending()];
        if (pitches.Length == 0)
        {
            return "<p>Nothing was marked.</p>\n";
        }

        StringBuilder table = new("<table>\n<caption>Marked of sung, in keys; a mark without a pitch counts for all pitches of its key. * beyond the comfortable range.</caption>\n<tr><th scope=\"col\">Pitch</th>");
        table.AppendJoin("", review.Choir.Parts.Select(part => $"<th scope=\"col\">{SeasonPage.Text(part.Name)}</th>")).Append("</tr>\n");
        foreach (int midi in pitches)
        {
            Pitch pitch = KeySpelling.TonicFor(midi, Mode.Major);
            table.Append($"<tr><th scope=\"row\">{SeasonPage.Text(review.Choir.Notes.Write(pitch))}</th>");
            table.AppendJoin("", review.Choir.Parts.Select(part => Cell(part, midi, [.. cells[(part.Id, midi.ToString(CultureInfo.InvariantCulture))]]))).Append("</tr>\n");
        }

        return table.Append("</table>\n").ToString();
    }

    private static string Cell(Part part, int midi, RateRow[] kinds)
    {
        if (kinds.Length == 0)
        {
            return "<td></td>";
        }

        (double marked, double sung) = (kinds.Sum(row => row.Rate.Marked), kinds[0].Rate.Exposed);
        double share = Math.Min(1, marked / sung);
        int grey = (int)Math.Round(255 - (155 * Math.Min(1, 2 * share)));
        string limit = part.Range.Comfortable.Contains(midi) ? "" : " *";
        return string.Create(CultureInfo.InvariantCulture, $"<td style=\"background:rgb({grey},{grey},{grey})\">{marked:0.#} / {sung:0}{limit}</td>");
    }
}
