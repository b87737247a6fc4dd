using System.Collections.Concurrent;
using System.Globalization;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Tests.Sessions.Findings.Seasons;

namespace WarmupConsole.Tests.Sessions.Findings;

/// <summary>What became of many seasons of one kind.</summary>
/// <param name="Seasons">How many; without those in which no weak pitch was ever sung.</param>
/// <param name="TopHits">The top finding is within a semitone of a hidden weakness of that part.</param>
/// <param name="Hidden">Weak pitches in all.</param>
/// <param name="Found">Of them, those that a finding of their part and kind is within a semitone of.</param>
/// <param name="Exact">Of them, those that a finding names exactly.</param>
/// <param name="Covered">Of those, whose interval holds the rate at which they were marked.</param>
/// <param name="CoveredHeard">Of those, whose interval holds the rate at which they went wrong, marked or not.</param>
/// <param name="FalseSeasons">Seasons with any finding further than a semitone from every hidden weakness of that part.</param>
internal sealed record RecoveryFigures(int Seasons, int TopHits, int Hidden, int Found, int Exact, int Covered, int CoveredHeard, int FalseSeasons)
{
    internal static RecoveryFigures Of(int seasons, Func<int, SeasonSpec> spec)
    {
        ConcurrentBag<RecoveryFigures> all = [];
        Parallel.For(0, seasons, new ParallelOptions { MaxDegreeOfParallelism = 2 }, i => all.Add(One(spec(i))));
        return all.Where(one => spec(0).Weaknesses == 0 || one.Hidden > 0).Aggregate(new RecoveryFigures(0, 0, 0, 0, 0, 0, 0, 0), (a, b) => new(
            a.Seasons + b.Seasons, a.TopHits + b.TopHits, a.Hidden + b.Hidden, a.Found + b.Found,
            a.Exact + b.Exact, a.Covered + b.Covered, a.CoveredHeard + b.CoveredHeard, a.FalseSeasons + b.FalseSeasons));
    }

    internal string Row(string name) => string.Create(
        CultureInfo.InvariantCulture,
        $"| {name} | {Seasons} | {Percent(TopHits, Seasons)} | {Percent(Found, Hidden)} | {Percent(Exact, Hidden)} | {Percent(Covered, Exact)} | {Percent(CoveredHeard, Exact)} | {Percent(FalseSeasons, Seasons)} |");

    private static string Percent(int part, int whole) => whole == 0 ? "–" : string.Create(CultureInfo.InvariantCulture, $"{100.0 * part / whole:0.0} %");

    private static RecoveryFigures One(SeasonSpec spec)
    {
        Season season = SeasonSimulator.Make(spec);
        IReadOnlyList<Finding> findings = ChoirFindings.From(SeasonChoir.Fold(season), SeasonChoir.Choir).Findings;
        Finding?[] exact = [.. season.Hidden.Select(weak => findings.FirstOrDefault(finding => IsNear(finding, weak, 0) && finding.Kind == weak.Kind))];
        return new(
            1,
            findings.Count > 0 && season.Hidden.Any(weak => IsNear(findings[0], weak, 1)) ? 1 : 0,
            season.Hidden.Count,
            season.Hidden.Count(weak => findings.Any(finding => IsNear(finding, weak, 1) && finding.Kind == weak.Kind)),
            exact.OfType<Finding>().Count(),
            exact.Zip(season.Hidden).Count(pair => pair.First is { } finding && Holds(finding, pair.Second.MarkedRate)),
            exact.OfType<Finding>().Count(finding => Holds(finding, spec.WeakRate)),
            findings.Any(finding => !season.Hidden.Any(weak => IsNear(finding, weak, 1))) ? 1 : 0);
    }

    private static bool IsNear(Finding finding, Weakness weak, int semitones) => finding.Part == weak.Part && Math.Abs(finding.Pitch.Midi - weak.Midi) <= semitones;

    private static bool Holds(Finding finding, double rate) => finding.Rate.Low <= rate && rate <= finding.Rate.High;
}
