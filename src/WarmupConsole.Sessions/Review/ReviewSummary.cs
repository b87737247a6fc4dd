using System.Globalization;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Review;

/// <summary>A warm-up in three sentences: how it went, what to work on, what went well.</summary>
internal static class ReviewSummary
{
    private const int MostNamed = 3;

    internal static IReadOnlyList<string> Of(SessionReview review, Choir choir)
    {
        ReviewMark[][] marks = [.. review.Marks.GroupBy(mark => mark.Id).Select(parts => parts.ToArray())];
        string work = Named(marks.Where(mark => mark[0] is { Kind: not null, IsPraise: false }), choir);
        string praise = Named(marks.Where(mark => mark[0].IsPraise), choir);
        int notes = marks.Count(mark => mark[0].Kind is null);
        return
        [
            Course(review),
            work.Length == 0 ? "Nothing to work on was marked." : $"To work on: {work}.",
            (praise.Length == 0 ? "No praise was marked" : $"Went well: {praise}") + (notes == 0 ? "." : $"; {ReviewText.Count(notes, "free note")} below."),
        ];
    }

    /// <summary>"Led to its end in 14:32 of 15 minutes: all 12 steps."</summary>
    private static string Course(SessionReview review)
    {
        string how = review.Ending switch
        {
            "finished" => "Led to its end in",
            "ended" when review.PlannedMinutes is null => "Led for",
            "ended" => "Ended early after",
            SessionReview.Running => "Still running, so far",
            _ => "Cut off after",
        };
        string minutes = review.PlannedMinutes is { } planned ? $" of {planned} minutes" : "";
        return $"{how} {ClockText.Of(review.Spent)}{minutes}: {Steps(review)}.";
    }

    /// <summary>"all 12 steps", "7 of 12 steps, 2 passed over, 3 never begun".</summary>
    private static string Steps(SessionReview review)
    {
        int all = review.Steps.Count + review.NotBegun.Count;
        int done = review.Steps.Count(step => step.HasWork);
        (int Number, string How)[] rows = [(review.Steps.Count - done, "passed over"), (review.NotBegun.Count, review.Ending == SessionReview.Running ? "to come" : "never begun")];
        string[] left = [.. rows.Where(row => row.Number > 0).Select(row => $"{row.Number} {row.How}")];
        string whole = review.PlannedMinutes is null ? "" : "all ";
        return left.Length == 0 ? $"{whole}{ReviewText.Count(all, "step")}" : $"{done} of {ReviewText.Count(all, "step")}, {string.Join(", ", left)}";
    }

    /// <summary>The most frequent first: "altos flat (3 times, in E♭ and E), tenors late (once, in C)"; more than three are counted.</summary>
    internal static string Named(IEnumerable<ReviewMark[]> marks, Choir choir)
    {
        ReviewMark[][][] alike = [.. marks.GroupBy(mark => Who(mark, choir)).Select(same => same.ToArray()).OrderByDescending(same => same.Length)];
        string rest = alike.Length > MostNamed ? $" and {alike.Length - MostNamed} more" : "";
        return string.Join(", ", alike.Take(MostNamed).Select(same => $"{Who(same[0], choir)} ({Times(same, choir)})")) + rest;
    }

    private static string Who(ReviewMark[] mark, Choir choir) =>
        MarkWords.Sentence(choir, ReviewText.PartsOf(mark, choir), MarkWords.What(choir, mark[0].Kind!, ""), "");

    private static string Times(ReviewMark[][] same, Choir choir)
    {
        string times = same.Length == 1 ? "once" : string.Create(CultureInfo.InvariantCulture, $"{same.Length} times");
        string[] keys = [.. same.Select(mark => mark[0].Key).OfType<Pitch>().Select(choir.Notes.WriteName).Distinct()];
        return keys.Length switch
        {
            0 => times,
            1 => $"{times}, in {keys[0]}",
            <= MostNamed => $"{times}, in {string.Join(", ", keys[..^1])} and {keys[^1]}",
            _ => $"{times}, in {keys.Length} keys",
        };
    }
}
