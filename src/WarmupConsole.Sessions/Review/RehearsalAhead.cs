using System.Globalization;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.Review;

/// <summary>What a warm-up says about the rehearsal behind it: what warmed up well, what to spare, what to listen for; and where its minutes went.</summary>
public static class RehearsalAhead
{
    /// <summary>Kinds that speak of the voice itself: what has them is spared.</summary>
    private static readonly string[] Tiring = ["strained", "pressed", "tired", "hoarse", "short-of-breath", "breathy"];

    /// <summary>Less than this over its plan is no news.</summary>
    private static readonly TimeSpan Noticed = TimeSpan.FromSeconds(30);

    /// <summary>Three sentences, and a fourth about the step that took the longest beyond its plan, if one did.</summary>
    /// <param name="review">The run.</param>
    /// <param name="warmup">What was led, with this evening's choir.</param>
    public static IReadOnlyList<string> Of(SessionReview review, Warmup warmup)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(warmup);
        Choir choir = warmup.UsualChoir;
        ReviewMark[][] marks = [.. review.Marks.Where(mark => mark.Kind is not null).GroupBy(mark => mark.Id).Select(parts => parts.ToArray())];
        return
        [
            Well(review, choir, marks),
            Spare(warmup, choir, marks),
            Listen(choir, marks),
            .. Longest(review, warmup),
        ];
    }

    /// <summary>Every step of the warm-up beside what it really took, in its order.</summary>
    public static IReadOnlyList<StepTime> Times(SessionReview review, Warmup warmup)
    {
        ArgumentNullException.ThrowIfNull(review);
        ArgumentNullException.ThrowIfNull(warmup);
        return [.. warmup.Steps.Select((step, index) => new StepTime(
            MarkText.Clean(step.Exercise.Title), step.Planned, review.Steps.FirstOrDefault(led => led.Step == index)?.Spent ?? TimeSpan.Zero))];
    }

    /// <summary>Praise; without any, how far the parts sang without a mark of strain.</summary>
    private static string Well(SessionReview review, Choir choir, ReviewMark[][] marks)
    {
        string praise = ReviewSummary.Named(marks.Where(mark => mark[0].IsPraise), choir);
        string[] reached = [.. choir.Parts.Select(part => Reached(part, review, choir)).OfType<string>()];
        return praise.Length > 0 ? $"Warmed up well: {praise}."
            : reached.Length > 0 ? $"Warmed up without a mark of strain: {string.Join(", ", reached)}."
            : "Warmed up: no part sang a key without a mark of strain.";
    }

    private static string? Reached(Part part, SessionReview review, Choir choir)
    {
        Pitch[] sung = [.. review.Rungs.Where(rung => rung.Whole && !IsTiring(part.Id, rung, review)).SelectMany(rung => rung.Pitches.GetValueOrDefault(part.Id) ?? [])];
        return sung.Length == 0 ? null : $"{PartNames.Plural(part)} up to {choir.Notes.Write(sung.MaxBy(pitch => pitch.Midi))}";
    }

    private static bool IsTiring(string part, SungRung rung, SessionReview review) =>
        review.Marks.Any(mark => mark.Step == rung.Step && mark.Rung == rung.Rung && (mark.Part == part || mark.Part.Length == 0) && Tiring.Contains(mark.Kind));

    private static string Spare(Warmup warmup, Choir choir, ReviewMark[][] marks)
    {
        string marked = ReviewSummary.Named(marks.Where(mark => Tiring.Contains(mark[0].Kind)), choir);
        string[] weak = [.. warmup.Choir.Parts.Where(part => warmup.Tonight.ReachPercentOf(Usual(part, choir)) < 100).Select(part => part.Id)];
        string tonight = weak.Length == 0 ? "" : $"{PartNames.Sentence(choir, weak.Length == choir.Parts.Count ? [] : weak)} (few, tired or with colds tonight)";
        string[] both = [.. new[] { marked, tonight }.Where(words => words.Length > 0)];
        return both.Length == 0 ? "To spare: nobody was marked tired or strained." : $"To spare: {string.Join("; ", both)}.";
    }

    private static Part Usual(Part part, Choir choir) => choir.Parts.First(usual => usual.Id == part.Id);

    private static string Listen(Choir choir, ReviewMark[][] marks)
    {
        string heard = ReviewSummary.Named(marks.Where(mark => !mark[0].IsPraise && !Tiring.Contains(mark[0].Kind)), choir);
        return heard.Length == 0 ? "To listen for: nothing was marked." : $"To listen for: {heard}.";
    }

    private static IEnumerable<string> Longest(SessionReview review, Warmup warmup)
    {
        (ReviewStep Step, TimeSpan Over)[] over =
        [
            .. review.Steps.Where(step => step.Step >= 0 && step.Step < warmup.Steps.Count)
                .Select(step => (step, step.Spent - warmup.Steps[step.Step].Planned)).Where(step => step.Item2 >= Noticed),
        ];
        return over.Length == 0 ? [] : [Longest(over.MaxBy(step => step.Over).Step, warmup)];
    }

    private static string Longest(ReviewStep step, Warmup warmup) => string.Create(
        CultureInfo.InvariantCulture,
        $"Longest beyond its plan: {MarkText.Clean(step.Title)}, {ClockText.Of(step.Spent)} for {ClockText.Of(warmup.Steps[step.Step].Planned)}.");
}
