using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>What is hard about single tones: their height, length, loudness and vowel, and what the logs say of them.</summary>
internal static class PitchHardships
{
    private const double Shortest = 0.5;
    private const double Longest = 4;
    private const double ShortestCounted = 0.2;
    private const double LongSeconds = 2;
    private const double SoftSeconds = 0.5;
    private const double SoftPoints = 1.5;
    private const double ExtremeWeighs = 3;
    private const double LowWeighs = 0.5;
    private const int Piano = 1;

    internal static IEnumerable<Hardship> Of(SungTone tone, LineView view)
    {
        PitchRange comfortable = view.Range.Comfortable;
        double weighed = Math.Clamp(tone.Seconds, Shortest, Longest);
        if (tone.High.Midi > comfortable.High.Midi)
        {
            yield return new(HardReason.AboveComfortable, tone.Bar, Beyond(tone.High.Midi - comfortable.High.Midi, tone.High.Midi - view.Range.Extreme.High.Midi) * weighed, tone.High, tone.Seconds);
        }

        if (tone.Low.Midi < comfortable.Low.Midi)
        {
            yield return new(HardReason.BelowComfortable, tone.Bar, LowWeighs * Beyond(comfortable.Low.Midi - tone.Low.Midi, view.Range.Extreme.Low.Midi - tone.Low.Midi) * weighed, tone.Low, tone.Seconds);
        }

        foreach (Hardship hardship in tone.High.Midi >= view.HighFrom ? High(tone, view, weighed) : [])
        {
            yield return hardship;
        }

        if (tone.Seconds >= ShortestCounted && Weakness(tone, view) is > 0 and double weakness)
        {
            yield return new(HardReason.WeakPitch, tone.Bar, weakness * weighed, tone.High, tone.Seconds);
        }
    }

    private static IEnumerable<Hardship> High(SungTone tone, LineView view, double weighed)
    {
        if (tone.Seconds >= LongSeconds)
        {
            yield return new(HardReason.HighAndLong, tone.Bar, tone.Seconds / LongSeconds, tone.High, tone.Seconds);
        }

        if (tone.Loudness <= Piano && tone.Seconds >= SoftSeconds)
        {
            yield return new(HardReason.HighAndSoft, tone.Bar, SoftPoints, tone.High, tone.Seconds);
        }

        if (tone.Seconds >= SoftSeconds && view.IsClosed(tone.Lyric))
        {
            yield return new(HardReason.ClosedVowelHigh, tone.Bar, weighed, tone.High, tone.Seconds);
        }
    }

    /// <summary>A semitone beyond comfortable is one, beyond extreme three.</summary>
    private static double Beyond(int comfortable, int extreme) => comfortable + ((ExtremeWeighs - 1) * Math.Max(0, extreme));

    /// <summary>1 on a weak pitch, a half a semitone beside one.</summary>
    private static double Weakness(SungTone tone, LineView view) => view.WeakPitches.Count == 0 ? 0
        : Math.Max(Weakness(tone.Low.Midi, view.WeakPitches), Weakness(tone.High.Midi, view.WeakPitches));

    private static double Weakness(int midi, IReadOnlySet<int> weak) => weak.Contains(midi) ? 1 : weak.Contains(midi - 1) || weak.Contains(midi + 1) ? 0.5 : 0;
}
