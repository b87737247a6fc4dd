using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>What is hard about phrases: how long one breath must last, and entries that nobody else makes.</summary>
internal static class BreathHardships
{
    /// <summary>Seconds that one breath carries an amateur with ease (common practice: eight to ten).</summary>
    private const double OneBreath = 10;
    private const double PointsASecond = 0.5;

    /// <summary>A rest shorter than this is no place to breathe.</summary>
    private const double ShortestBreath = 0.15;
    private const string Punctuation = ".,;:!?";
    private const double Alone = 2;
    private const double Beside = 1;
    private static readonly Beats RestBefore = Beats.FromBeats(4);

    internal static IEnumerable<Hardship> Of(IReadOnlyList<SungTone> tones, LineView view) =>
        [.. Phrases(tones).SelectMany(Long), .. tones.Index().Where(tone => Ensemble.Begins(tones, tone.Index, RestBefore)).SelectMany(tone => Exposed(tone.Item, view))];

    /// <summary>From breath to breath: at a rest, a breath mark, or after punctuation.</summary>
    private static IEnumerable<ArraySegment<SungTone>> Phrases(IReadOnlyList<SungTone> tones)
    {
        SungTone[] all = [.. tones];
        int from = 0;
        for (int at = 1; at <= all.Length; at++)
        {
            if (at == all.Length || IsBreath(all[at - 1], all[at]))
            {
                yield return new(all, from, at - from);
                from = at;
            }
        }
    }

    private static bool IsBreath(SungTone before, SungTone after) =>
        after.StartSeconds - before.EndSeconds >= ShortestBreath || before.BreathAfter
        || (after.IsNewSyllable && before.Lyric.Length > 0 && Punctuation.Contains(before.Lyric.TrimEnd('"', '\'', '”', '’')[^1..], StringComparison.Ordinal));

    /// <summary>What is sung after the first ten seconds weighs, in the bars where it is sung.</summary>
    private static IEnumerable<Hardship> Long(ArraySegment<SungTone> phrase)
    {
        double whole = phrase[^1].EndSeconds - phrase[0].StartSeconds;
        double breathless = phrase[0].StartSeconds + OneBreath;
        return whole <= OneBreath
            ? []
            : phrase.Where(tone => tone.EndSeconds > breathless).GroupBy(tone => tone.Bar).Select(bar => new Hardship(
                HardReason.LongPhrase, bar.Key, PointsASecond * bar.Sum(tone => tone.EndSeconds - Math.Max(tone.StartSeconds, breathless)), bar.Last().High, whole));
    }

    private static IEnumerable<Hardship> Exposed(SungTone entry, LineView view)
    {
        int entering = view.All.Entering(entry.Start) - view.Own.Entering(entry.Start);
        int sounding = view.All.Sounding(entry.Start) - view.Own.Sounding(entry.Start);
        return view.HasOthers && entering == 0 ? [new(HardReason.ExposedEntry, entry.Bar, sounding > 0 ? Beside : Alone, entry.High, 0)] : [];
    }
}
