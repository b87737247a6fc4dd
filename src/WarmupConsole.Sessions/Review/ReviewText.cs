using System.Globalization;
using System.Text;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Review;

/// <summary>A review in words for a musician, and the table of what was marked against what was sung.</summary>
public static class ReviewText
{
    private const int CellWidth = 10;

    /// <summary>Several lines, each ended by a line feed. Control characters from names and typed text are left out.</summary>
    public static string Write(SessionReview review, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(choir);
        StringBuilder text = new();
        WriteHead(text, review);
        WriteSteps(text, review);
        WriteMarks(text, review, choir);
        WriteTable(text, review, choir);
        return text.ToString();
    }

    /// <summary>What was marked of one part, in words: "altos flat in E".</summary>
    public static string Sentence(ReviewMark mark, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(mark);
        return Sentence([mark], choir);
    }

    private static string Sentence(ReviewMark[] parts, Choir choir)
    {
        ReviewMark mark = parts[0];
        string[] ids = [.. parts.Select(part => part.Part).Where(id => id.Length > 0)];
        IReadOnlyList<string> named = ids.Length == choir.Parts.Count ? [] : ids;
        return mark.Kind is { } kind
            ? MarkWords.Sentence(choir, named, kind, MarkWords.Where(choir.Notes, null, mark.Place, mark.Key))
            : "noted: " + MarkText.Clean(mark.Raw);
    }

    private static void WriteHead(StringBuilder text, SessionReview review)
    {
        string plan = review.PlanName.Length == 0 ? "without a plan" : "plan " + MarkText.Clean(review.PlanName);
        string how = review.Ending switch
        {
            "finished" => "led to its end",
            "ended" => "ended early",
            _ => "cut off",
        };
        text.Append(CultureInfo.InvariantCulture, $"{MarkText.Clean(review.Choir)}, {review.Start:d MMMM yyyy, HH:mm} to {review.End:HH:mm}, {plan}: {Clock(review.Spent)}, {how}.\n");
    }

    private static void WriteSteps(StringBuilder text, SessionReview review)
    {
        text.Append("\nSteps\n");
        foreach (ReviewStep step in review.Steps)
        {
            string work = step.Rounds > 0 ? Count(step.Rounds, "round") : Count(step.Rungs, "key");
            text.Append(CultureInfo.InvariantCulture, $"  {step.Step + 1,2}  {MarkText.Clean(step.Title),-32} {Clock(step.Spent),6}  of it talk {Clock(step.Talk)}, {work}\n");
        }
    }

    private static void WriteMarks(StringBuilder text, SessionReview review, Choir choir)
    {
        text.Append(review.Marks.Count == 0 ? "\nNothing was marked.\n" : "\nMarks\n");
        foreach (ReviewMark[] parts in review.Marks.GroupBy(mark => mark.Id).Select(group => group.ToArray()))
        {
            string title = review.Steps.FirstOrDefault(step => step.Step == parts[0].Step)?.Title ?? "";
            string where = title.Length == 0 ? "" : $" ({MarkText.Clean(title)})";
            text.Append(CultureInfo.InvariantCulture, $"  {Sentence(parts, choir)}{where}, typed: {MarkText.Clean(parts[0].Raw)}\n");
        }
    }

    private static void WriteTable(StringBuilder text, SessionReview review, Choir choir)
    {
        Part[] parts = [.. choir.Parts.Where(part => review.Counts.Any(count => count.Part == part.Id))];
        if (parts.Length == 0)
        {
            return;
        }

        text.Append("\nPitches, marked / sung (in keys; a mark without a pitch counts for all pitches of its key)\n      ");
        text.AppendJoin("", parts.Select(part => PartNames.Plural(part).PadLeft(CellWidth))).Append('\n');
        ILookup<int, PitchCount> rows = review.Counts.ToLookup(count => count.Midi);
        foreach (IGrouping<int, PitchCount> row in rows.OrderByDescending(row => row.Key))
        {
            Pitch pitch = KeySpelling.TonicFor(row.Key, Mode.Major);
            text.Append(CultureInfo.InvariantCulture, $"  {choir.Notes.Write(pitch),-4}").AppendJoin("", parts.Select(part => Cell(row, part))).Append('\n');
        }
    }

    private static string Cell(IEnumerable<PitchCount> row, Part part) =>
        (row.FirstOrDefault(count => count.Part == part.Id) is { } count ? $"{count.Marked} / {count.Sung}" : "·").PadLeft(CellWidth);

    private static string Count(int number, string thing) => number == 1 ? $"1 {thing}" : $"{number} {thing}s";

    private static string Clock(TimeSpan time) => $"{(int)time.TotalMinutes}:{time.Seconds.ToString("00", CultureInfo.InvariantCulture)}";
}
