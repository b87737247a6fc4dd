using System.Globalization;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings.Estimates;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Findings;

/// <summary>Findings and range advice in a director's words.</summary>
public static class FindingText
{
    private const int MostQuoted = 4;

    /// <summary>"altos flat on B♭4".</summary>
    public static string Title(Finding finding, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(choir);
        return MarkWords.Sentence(choir, [finding.Part], finding.Kind, "on " + choir.Notes.Write(finding.Pitch));
    }

    /// <summary>What it rests on, in sentences.</summary>
    public static IReadOnlyList<string> Sentences(Finding finding, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(finding);
        ArgumentNullException.ThrowIfNull(choir);
        return
        [
            $"Sung {Times(finding.Rate.Exposed)} in {Count(finding.Sessions.Count, "session")}; marked in about {finding.Rate.Marked.ToString("0", CultureInfo.InvariantCulture)} of these keys.",
            $"This pitch brings the mark {Share(finding.Rate)}; in keys without it the mark comes {Share(finding.Elsewhere)}.",
            .. finding.Circumstances.Select(Circumstance),
            Course(finding),
            $"Evidence: {Count(finding.Evidence.Count, "mark")}, such as {Quotes(finding)}.",
        ];
    }

    /// <summary>How it changes over the weeks, in a sentence.</summary>
    public static string Course(Finding finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        return Trend(finding.Trend);
    }

    /// <summary>"comfortable top of the tenors: F4 to G4".</summary>
    public static string Title(RangeAdvice advice, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(advice);
        ArgumentNullException.ThrowIfNull(choir);
        Part part = choir.Parts.First(known => known.Id == advice.Part);
        (Pitch from, Pitch to) = advice.IsTop
            ? (part.Range.Comfortable.High, advice.Proposed.Comfortable.High)
            : (part.Range.Comfortable.Low, advice.Proposed.Comfortable.Low);
        return $"comfortable {(advice.IsTop ? "top" : "bottom")} of {PartPlural.Of(part)}: {choir.Notes.Write(from)} to {choir.Notes.Write(to)}";
    }

    /// <summary>What it rests on: "F♯4 in trouble in 1 of 24 keys (4 sessions)".</summary>
    public static string Sentence(RangeAdvice advice, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(advice);
        ArgumentNullException.ThrowIfNull(choir);
        IEnumerable<string> pitches = advice.Evidence.Select(pitch => string.Create(
            CultureInfo.InvariantCulture,
            $"{choir.Notes.Write(KeySpelling.TonicFor(pitch.Midi, Mode.Major))} in trouble in {pitch.Rate.Marked:0} of {pitch.Rate.Exposed:0} keys ({Count(pitch.Sessions, "session")})"));
        return $"{string.Join(", ", pitches)}. Accept it with: warmup ranges accept {advice.Part}";
    }

    /// <summary>"33 % of the time (21 to 47 %)"; "next to never" where all of that would be 0.</summary>
    private static string Share(Rate rate) => Percent(rate.High) == "0" ? "next to never" : string.Create(
        CultureInfo.InvariantCulture, $"{Percent(rate.Share)} % of the time ({Percent(rate.Low)} to {Percent(rate.High)} %)");

    private static string Circumstance(Circumstance one)
    {
        string when = one.Aspect switch
        {
            Aspect.Vowel => $"on {one.Value}",
            Aspect.Loudness => $"at {one.Value}",
            Aspect.Length => $"on {one.Value} notes",
            _ => $"in the {one.Value} of the warm-up",
        };
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Above all {when}: {one.There.Marked:0} of {one.There.Exposed:0} keys, otherwise {one.Otherwise.Marked:0} of {one.Otherwise.Exposed:0}.");
    }

    private static string Trend(Trend trend)
    {
        string change = string.Create(CultureInfo.InvariantCulture, $"{Percent(trend.Earlier.Share)} % in the earlier half, {Percent(trend.Later.Share)} % in the later");
        return trend.Direction switch
        {
            TrendDirection.Better => $"Getting better: {change}.",
            TrendDirection.Worse => $"Getting worse: {change}.",
            TrendDirection.Same => $"The same over these weeks: {change}.",
            _ => "Too early to say whether it gets better or worse.",
        };
    }

    private static string Quotes(Finding finding) => string.Join("; ", finding.Evidence
        .OrderByDescending(evidence => evidence.Blamed).Take(MostQuoted)
        .Select(evidence => $"\"{MarkText.Clean(evidence.Raw)}\" ({MarkText.Clean(evidence.Session)}, mark {evidence.Mark})"));

    private static string Times(double exposed) => exposed == 1 ? "once" : string.Create(CultureInfo.InvariantCulture, $"{exposed:0} times");

    private static string Percent(double share) => Math.Round(share * 100).ToString("0", CultureInfo.InvariantCulture);

    private static string Count(int number, string thing) => number == 1 ? $"1 {thing}" : $"{number} {thing}s";
}
