using System.Globalization;
using System.Text;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Review;

/// <summary>A review in words for a musician: three sentences, then step by step, mark by mark, pitch by pitch.</summary>
public static class ReviewText
{
    /// <summary>Several lines, each ended by a line feed. Control characters from names and typed text are left out.</summary>
    /// <param name="review">What is told.</param>
    /// <param name="choir">Its parts, kinds of mark and note names.</param>
    /// <param name="allPitches">True to list every pitch that was sung, false for those with marks only.</param>
    public static string Write(SessionReview review, Choir choir, bool allPitches = false)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(choir);
        StringBuilder text = new();
        WriteHead(text, review);
        text.AppendJoin("", ReviewSummary.Of(review, choir).Select(sentence => sentence + "\n"));
        WriteSteps(text, review);
        WriteCuts(text, review);
        WriteMarks(text, review, choir);
        PitchTable.Write(text, review, choir, allPitches);
        return text.ToString();
    }

    /// <summary>What was marked of one part, in words: "altos flat in E".</summary>
    public static string Sentence(ReviewMark mark, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(mark);
        return Sentence([mark], choir);
    }

    internal static string Count(int number, string thing) => number == 1 ? $"1 {thing}" : $"{number} {thing}s";

    /// <summary>The parts of one mark; empty when it was everyone.</summary>
    internal static IReadOnlyList<string> PartsOf(ReviewMark[] mark, Choir choir)
    {
        string[] ids = [.. mark.Select(part => part.Part).Where(id => id.Length > 0)];
        return ids.Length == choir.Parts.Count ? [] : ids;
    }

    private static string Sentence(ReviewMark[] parts, Choir choir)
    {
        ReviewMark mark = parts[0];
        return mark.Kind is { } kind
            ? MarkWords.Sentence(choir, PartsOf(parts, choir), MarkWords.What(choir, kind, mark.Strength), Where(parts, choir))
            : "noted: " + MarkText.Clean(mark.Raw);
    }

    private static string Where(ReviewMark[] parts, Choir choir)
    {
        Pitch[] named = [.. parts.Where(part => part.IsPitchNamed).SelectMany(part => part.Pitches).DistinctBy(pitch => pitch.Midi)];
        string octaves = named.Length > 1 ? $"on {choir.Notes.WriteName(named[0])}, {parts[0].Place}" : parts[0].Place;
        return MarkWords.Where(choir.Notes, named.Length == 1 ? named[0] : null, octaves, parts[0].Key);
    }

    private static void WriteHead(StringBuilder text, SessionReview review)
    {
        string plan = review.PlanName.Length == 0 ? "without a plan" : "plan " + MarkText.Clean(review.PlanName);
        text.Append(CultureInfo.InvariantCulture, $"{MarkText.Clean(review.Choir)}, {review.Start:d MMMM yyyy, HH:mm} to {review.End:HH:mm}, {plan}\n\n");
    }

    private static void WriteSteps(StringBuilder text, SessionReview review)
    {
        text.Append("\nSteps\n");
        string notBegun = review.Ending == SessionReview.Running ? "to come" : "never began";
        foreach (ReviewStep step in review.Steps.Concat(review.NotBegun).OrderBy(step => step.Step))
        {
            string course = review.NotBegun.Contains(step) ? $"     –  {notBegun}" : $"{ClockText.Of(step.Spent),6}  {Work(step)}";
            text.Append(CultureInfo.InvariantCulture, $"  {step.Step + 1,2}  {MarkText.Clean(step.Title),-32} {course}\n");
        }
    }

    private static void WriteCuts(StringBuilder text, SessionReview review)
    {
        if (review.Cuts.Count > 0)
        {
            text.Append("\nCut, as it ran late\n");
        }

        foreach (ReviewCut cut in review.Cuts)
        {
            string what = cut.IsWhole ? "left out" : "no way back";
            text.Append(CultureInfo.InvariantCulture, $"  {cut.Step + 1,2}  {MarkText.Clean(cut.Title),-32} {what}, saved {ClockText.Of(cut.Saved)}\n");
        }
    }

    private static string Work(ReviewStep step) => step.HasWork
        ? $"of it talk {ClockText.Of(step.Talk)}, {(step.HasKeys ? Count(step.Rungs, "key") : Count(step.Rounds, "round"))}"
        : $"passed over: {(step.HasKeys ? "no key was sung to its end" : "no round was begun")}";

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
}
