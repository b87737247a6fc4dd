using System.Globalization;
using System.Text;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Review;

/// <summary>What was marked against what was sung: a row for each pitch, a column for each part.</summary>
internal static class PitchTable
{
    private const int CellWidth = 10;

    /// <summary>Rows with marks, or all of them; nothing when no row is left.</summary>
    internal static void Write(StringBuilder text, SessionReview review, Choir choir, bool all)
    {
        Part[] parts = [.. choir.Parts.Where(part => review.Counts.Any(count => count.Part == part.Id))];
        IGrouping<int, PitchCount>[] rows = [.. review.Counts.GroupBy(count => count.Midi).Where(row => all || row.Any(count => count.Marked > 0)).OrderByDescending(row => row.Key)];
        if (rows.Length == 0)
        {
            return;
        }

        text.Append(all ? "\nPitches" : "\nPitches with marks").Append(": in how many keys each was marked / sung; a mark without a pitch counts for all pitches of its key\n      ");
        text.AppendJoin("", parts.Select(part => PartNames.Plural(part).PadLeft(CellWidth))).Append('\n');
        foreach (IGrouping<int, PitchCount> row in rows)
        {
            Pitch pitch = KeySpelling.TonicFor(row.Key, Mode.Major);
            text.Append(CultureInfo.InvariantCulture, $"  {choir.Notes.Write(pitch),-4}").AppendJoin("", parts.Select(part => Cell(row, part))).Append('\n');
        }
    }

    private static string Cell(IEnumerable<PitchCount> row, Part part) =>
        (row.FirstOrDefault(count => count.Part == part.Id) is { } count ? $"{count.Marked} / {count.Sung}" : "·").PadLeft(CellWidth);
}
