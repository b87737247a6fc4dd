using System.Text.Json;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.App.Reports;

/// <summary>A review as <c>warmup review --json</c> prints it.</summary>
internal sealed record ReviewReport(
    string Choir,
    string Plan,
    DateTimeOffset Start,
    double SpentSeconds,
    string Ending,
    IReadOnlyList<ReviewReport.Left> NeverBegan,
    IReadOnlyList<ReviewReport.Cut> Cuts,
    IReadOnlyList<ReviewReport.Mark> Marks,
    IReadOnlyList<ReviewReport.Count> Pitches)
{
    private static ReviewReport From(SessionReview review) => new(
        review.Choir,
        review.PlanName,
        review.Start,
        Math.Round(review.Spent.TotalSeconds, 1),
        review.Ending,
        [.. review.NotBegun.Select(step => new Left(step.Step + 1, step.ExerciseId))],
        [.. review.Cuts.Select(cut => new Cut(cut.Step + 1, cut.Title, cut.IsWhole, cut.Saved.TotalSeconds))],
        [.. review.Marks.Select(Of)],
        [.. review.Counts.Select(count => new Count(count.Part, count.Midi, count.Marked, count.Sung))]);

    internal static string ToJson(LastSession session) => JsonSerializer.Serialize(From(session.Review), ReportJson.Default.ReviewReport) + "\n";

    private static Mark Of(ReviewMark mark) => new(
        mark.Id,
        mark.Part.Length == 0 ? null : mark.Part,
        mark.Kind,
        mark.Strength,
        mark.Key?.ToAscii(),
        [.. mark.Pitches.Select(pitch => pitch.Midi)],
        mark.Raw,
        mark.Step + 1,
        mark.Rung + 1);

    /// <param name="Id">The same for the parts of one mark.</param>
    /// <param name="Part">Id of the part; null for everyone or a free note.</param>
    /// <param name="Kind">Id of the kind; null for a free note.</param>
    /// <param name="Strength">How much of it, or empty.</param>
    /// <param name="Key">Tonic, such as "Eb4"; null in steps without keys.</param>
    /// <param name="Pitches">Sounding MIDI numbers it may mean.</param>
    /// <param name="Raw">What was typed.</param>
    /// <param name="Step">From 1.</param>
    /// <param name="Rung">From 1.</param>
    internal sealed record Mark(int Id, string? Part, string? Kind, string Strength, string? Key, IReadOnlyList<int> Pitches, string Raw, int Step, int Rung);

    /// <param name="Step">From 1.</param>
    /// <param name="Exercise">Its id.</param>
    internal sealed record Left(int Step, string Exercise);

    /// <param name="Step">From 1.</param>
    /// <param name="Title">Of its exercise.</param>
    /// <param name="LeftOut">True when the whole step was left out, false when its way back was.</param>
    /// <param name="SavedSeconds">As reckoned then.</param>
    internal sealed record Cut(int Step, string Title, bool LeftOut, double SavedSeconds);

    internal sealed record Count(string Part, int Midi, int Marked, int Sung);
}
