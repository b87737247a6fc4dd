using System.Globalization;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Ladders;

/// <summary>The sentences that say why a ladder starts, stops, or has no key.</summary>
internal static class LadderReasons
{
    /// <summary>Nothing when it starts where it should; else which part moved it.</summary>
    internal static IEnumerable<string> Start(KeyFit fit, int wished, int start)
    {
        if (wished != start)
        {
            yield return $"Starts at {Key(fit, start)}: in {Key(fit, wished)} {Need(fit, Blocker(fit, wished), wished)}.";
        }
    }

    internal static string Stop(KeyFit fit, int last, int next) => fit.Fits(next)
        ? CutShort(fit, last)
        : $"Stops at {Key(fit, last)}: in {Key(fit, next)} {Need(fit, Blocker(fit, next), next)}.";

    internal static string CutShort(KeyFit fit, int last) =>
        $"Stops at {Key(fit, last)}: the plan asks for {Keys(fit.Spec.MostKeys ?? 0)} at most.";

    internal static string NoKey(KeyFit fit, IReadOnlyList<Part> parts)
    {
        if (fit.Limiting.Length == 0)
        {
            IEnumerable<string> names = parts.Select(part => part.Id).Concat(parts.SelectMany(part => part.Groups)).Distinct();
            return $"No key: no part or group is called '{fit.Spec.Limit}'; write everyone, any, or one of {string.Join(", ", names)}.";
        }

        PartKeys narrow = fit.Limiting.MinBy(keys => keys.Allowed.High - keys.Allowed.Low);
        return narrow.Allowed.Count == 0 ? TooWide(narrow) : NoCommonKey(fit);
    }

    internal static string Two(KeyFit fit, TwoLadders two)
    {
        string few = fit.Common.Count == 0 ? "No key fits" : $"Only {Keys(fit.Common.Count)} fit{(fit.Common.Count == 1 ? "s" : "")}";
        return $"{few} everyone; two ladders would serve: first {Names(two.Lower)} in {Way(fit, two.LowerKeys)}, then {Names(two.Higher)} in {Way(fit, two.HigherKeys)}.";
    }

    /// <summary>For a key beyond extreme: who could not sing it.</summary>
    internal static string BeyondExtreme(KeyFit fit, IEnumerable<PartKeys> parts, int midi)
    {
        Pitch tonic = fit.Tonic(midi);
        return string.Join(' ', parts.Select(keys => $"In {fit.Notes.WriteName(tonic)} {Need((fit.Notes, keys.Span(tonic)), keys.Part, keys.Part.Range.Extreme, Extreme)}: they would rest."));
    }

    private static string TooWide(PartKeys narrow)
    {
        int span = narrow.Demands.SpanSemitones;
        int allowed = span + narrow.Allowed.High - narrow.Allowed.Low;
        return string.Create(CultureInfo.InvariantCulture, $"No key fits {PartPlural.Of(narrow.Part)}: the pattern spans {span} semitones, and {allowed} are allowed to them.");
    }

    private static string NoCommonKey(KeyFit fit)
    {
        PartKeys low = fit.Limiting.MinBy(keys => keys.Allowed.High);
        PartKeys high = fit.Limiting.MaxBy(keys => keys.Allowed.Low);
        string whom = fit.Spec.Limit == LadderSpec.Everyone ? "everyone" : $"all of '{fit.Spec.Limit}'";
        return $"No key fits {whom}: {PartPlural.Of(low.Part)} need {fit.Notes.Write(fit.Tonic(low.Allowed.High))} or lower, {PartPlural.Of(high.Part)} {fit.Notes.Write(fit.Tonic(high.Allowed.Low))} or higher.";
    }

    /// <summary>The limiting part that a key lies beyond; where any part will do, the one it lies beyond the least.</summary>
    private static PartKeys Blocker(KeyFit fit, int tonic)
    {
        PartKeys[] beyond = [.. fit.Limiting.Where(keys => !keys.Allowed.Contains(tonic))];
        return fit.AnyPartWillDo ? beyond.MinBy(Distance) : beyond.MaxBy(Distance);

        int Distance(PartKeys keys) => Math.Max(keys.Allowed.Low - tonic, tonic - keys.Allowed.High);
    }

    private static string Need(KeyFit fit, PartKeys keys, int midi)
    {
        (NoteNaming, PitchRange) span = (fit.Notes, keys.Span(fit.Tonic(midi)));
        Part part = keys.Part;
        int reach = fit.Spec.ReachPercent;
        return reach switch
        {
            0 => Need(span, part, part.Range.Comfortable, Comfortable),
            100 => Need(span, part, part.Range.Extreme, Extreme),
            _ => string.Create(CultureInfo.InvariantCulture, $"{Need(span, part, part.Range.Comfortable, Comfortable)}, more than a reach of {reach} % allows"),
        };
    }

    private static string Need((NoteNaming Notes, PitchRange Span) asked, Part part, PitchRange range, Func<string, bool, string> words)
    {
        (NoteNaming notes, PitchRange span) = asked;
        bool above = span.High.Midi > range.High.Midi;
        int semitones = above ? span.High.Midi - range.High.Midi : range.Low.Midi - span.Low.Midi;
        string needed = notes.Write(above ? span.High : span.Low);
        return $"{PartPlural.Of(part)} would need {needed}, {Semitones(semitones)} {(above ? "above" : "below")} their {words(notes.Write(above ? range.High : range.Low), above)}";
    }

    private static string Comfortable(string end, bool above) => $"comfortable {end}";

    private static string Extreme(string end, bool above) => above ? $"highest note {end}" : $"lowest note {end}";

    private static string Key(KeyFit fit, int midi) => fit.Notes.WriteName(fit.Tonic(midi));

    private static string Semitones(int count) => count == 1 ? "a semitone" : string.Create(CultureInfo.InvariantCulture, $"{count} semitones");

    private static string Keys(int count) => count == 1 ? "one key" : string.Create(CultureInfo.InvariantCulture, $"{count} keys");

    private static string Names(IReadOnlyList<PartKeys> parts) => string.Join(" and ", parts.Select(keys => PartPlural.Of(keys.Part)));

    private static string Way(KeyFit fit, KeyWindow keys) => $"{fit.Notes.Write(fit.Tonic(keys.Low))} to {fit.Notes.Write(fit.Tonic(keys.High))}";
}
