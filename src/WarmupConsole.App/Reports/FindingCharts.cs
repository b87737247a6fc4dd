using System.Globalization;
using WarmupConsole.App.Running;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.App.Reports;

/// <summary>A finding from session to session, and beside the other pitches of its part.</summary>
internal static class FindingCharts
{
    private const string ByPitch = "Marks of this kind that may mean a key with the pitch, of all such keys; the full point is the pitch of the finding. Its neighbours sound in the same keys and share its marks.";
    private const string BySession = "Share of the times it was sung that are put down to this pitch; the lines are 90 % intervals, the numbers below the date the times sung.";

    internal static string Write(Finding finding, SeasonReview review, string title) =>
        RateChart.Write($"{title}, session by session", BySession, "Session", [.. finding.Sessions.Select(Session)])
        + RateChart.Write($"{title}, pitch by pitch", ByPitch, "Pitch", [.. Pitches(finding, review)]);

    private static ChartPoint Session(SessionShare session) => new(
        session.Start.ToString("d/M", CultureInfo.InvariantCulture),
        session.Start.ToString("d MMMM", CultureInfo.InvariantCulture),
        Rate.Of(Math.Min(session.Exposed, session.Blamed), session.Exposed),
        true);

    private static IEnumerable<ChartPoint> Pitches(Finding finding, SeasonReview review) =>
        from row in review.Rates
        where row.Part == finding.Part && row.Kind == finding.Kind && row.Aspect == Aspect.Pitch
        let midi = int.Parse(row.Value, CultureInfo.InvariantCulture)
        orderby midi
        let name = review.Choir.Notes.Write(KeySpelling.TonicFor(midi, Mode.Major))
        select new ChartPoint(name, name, row.Rate, midi == finding.Pitch.Midi);
}
