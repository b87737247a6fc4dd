using System.Text.Json;
using System.Text.Json.Nodes;
using WarmupConsole.App.Running;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.App.Reports;

/// <summary>The last weeks as <c>warmup review --json</c> prints them, under "season".</summary>
internal sealed record SeasonReport(
    IReadOnlyList<string> Sessions,
    IReadOnlyList<SeasonReport.Found> Findings,
    IReadOnlyList<string> Dismissed,
    IReadOnlyList<SeasonReport.Limit> Ranges,
    IReadOnlyList<SeasonReport.Served> Purposes,
    IReadOnlyList<SeasonReport.Usual> Exercises,
    IReadOnlyList<string> LeftOut)
{
    /// <summary>The report on the last session with that of the season in it.</summary>
    internal static string Into(string lastSession, SeasonReview review)
    {
        JsonNode whole = JsonNode.Parse(lastSession)!;
        whole["season"] = JsonSerializer.SerializeToNode(From(review), ReportJson.Default.SeasonReport);
        return whole.ToJsonString(ReportJson.Default.Options) + "\n";
    }

    private static SeasonReport From(SeasonReview review) => new(
        [.. review.Sessions.Select(session => session.Name)],
        [.. review.Findings.Select(finding => Of(finding, FindingText.Title(finding, review.Choir)))],
        [.. review.Dismissed.Select(dismissed => dismissed.Finding.Id)],
        [.. review.Ranges.Select(advice => Of(advice, FindingText.Title(advice, review.Choir)))],
        [.. review.Practised.Purposes.Select(purpose => new Served(PurposeData.Id(purpose.Purpose), purpose.Steps, purpose.Sessions, purpose.Last, purpose.Since))],
        [.. review.Practised.Exercises.Select(exercise => new Usual(exercise.Id, exercise.Times, Seconds(exercise.Talk), Seconds(exercise.Spent), exercise.Last))],
        review.LeftOut);

    private static Found Of(Finding finding, string title) => new(
        finding.Id,
        title,
        finding.Part,
        finding.Kind,
        finding.Pitch.Midi,
        Of(finding.Rate),
        Of(finding.Elsewhere),
        Math.Round(finding.Strength, 2),
        finding.Chance,
        [.. finding.Circumstances.Select(one => new When(one.Aspect.ToString().ToLowerInvariant(), one.Value, Of(one.There), Of(one.Otherwise)))],
        finding.Trend.Direction switch
        {
            TrendDirection.Better => "better",
            TrendDirection.Same => "same",
            TrendDirection.Worse => "worse",
            _ => "too early",
        },
        [.. finding.Sessions.Select(session => new Evening(session.Session, Rounded(session.Blamed), session.Exposed))],
        [.. finding.Evidence.Select(mark => new BlamedMark(mark.Session, mark.Mark, mark.Raw, Rounded(mark.Blamed)))]);

    private static Limit Of(RangeAdvice advice, string title) => new(
        title,
        advice.Part,
        PitchRangeText.Write(advice.Proposed.Extreme),
        PitchRangeText.Write(advice.Proposed.Comfortable),
        [.. advice.Evidence.Select(pitch => new Edge(pitch.Midi, pitch.Sessions, Of(pitch.Rate)))]);

    private static Share Of(Rate rate) => new(Rounded(rate.Marked), rate.Exposed, Rounded(rate.Share), Rounded(rate.Low), Rounded(rate.High));

    private static double Seconds(TimeSpan time) => Math.Round(time.TotalSeconds, 1);

    private static double Rounded(double value) => Math.Round(value, 4);

    /// <param name="Id">For <c>warmup review dismiss</c>.</param>
    /// <param name="Words">In words.</param>
    /// <param name="Part">Id of the part.</param>
    /// <param name="Kind">Id of the kind of mark.</param>
    /// <param name="Midi">The sounding pitch.</param>
    /// <param name="Rate">The pitch's own.</param>
    /// <param name="Elsewhere">In keys without it.</param>
    /// <param name="Strength">Gain in log-likelihood.</param>
    /// <param name="Chance">The probability by chance alone.</param>
    /// <param name="Above">When it is worse.</param>
    /// <param name="Trend">better, same, worse or too early.</param>
    /// <param name="Sessions">Session by session.</param>
    /// <param name="Evidence">Mark by mark.</param>
    internal sealed record Found(
        string Id,
        string Words,
        string Part,
        string Kind,
        int Midi,
        Share Rate,
        Share Elsewhere,
        double Strength,
        double Chance,
        IReadOnlyList<When> Above,
        string Trend,
        IReadOnlyList<Evening> Sessions,
        IReadOnlyList<BlamedMark> Evidence);

    /// <summary>Marked ÷ exposed; the share with its 90 % interval.</summary>
    internal sealed record Share(double Marked, double Exposed, double Estimate, double Low, double High);

    internal sealed record When(string Aspect, string Value, Share There, Share Otherwise);

    internal sealed record Evening(string Session, double Marked, int Exposed);

    internal sealed record BlamedMark(string Session, int Id, string Raw, double Blamed);

    internal sealed record Limit(string Words, string Part, string Extreme, string Comfortable, IReadOnlyList<Edge> Evidence);

    /// <param name="Purpose">Its id.</param>
    /// <param name="Steps">Steps led that serve it.</param>
    /// <param name="Sessions">Sessions with such a step.</param>
    /// <param name="Last">When last; null when never.</param>
    /// <param name="SessionsSince">Sessions after that one.</param>
    internal sealed record Served(string Purpose, int Steps, int Sessions, DateTimeOffset? Last, int SessionsSince);

    /// <summary>The middle one of all times an exercise was led.</summary>
    internal sealed record Usual(string Exercise, int Times, double TalkSeconds, double SpentSeconds, DateTimeOffset Last);

    internal sealed record Edge(int Midi, int Sessions, Share Trouble);
}
