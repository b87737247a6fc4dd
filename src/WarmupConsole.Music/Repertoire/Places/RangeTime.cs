using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>Seconds that a line is sung: in all, outside the comfortable range, and outside the extreme one.</summary>
/// <param name="Sung">In all.</param>
/// <param name="BeyondComfortable">Above or below comfortable, extremes included.</param>
/// <param name="BeyondExtreme">Above or below extreme.</param>
public readonly record struct RangeTime(double Sung, double BeyondComfortable, double BeyondExtreme)
{
    internal static RangeTime Of(IEnumerable<SungTone> tones, VoiceRange range)
    {
        (double sung, double comfortable, double extreme) = (0, 0, 0);
        foreach (SungTone tone in tones)
        {
            sung += tone.Seconds;
            comfortable += IsIn(range.Comfortable, tone) ? 0 : tone.Seconds;
            extreme += IsIn(range.Extreme, tone) ? 0 : tone.Seconds;
        }

        return new(sung, comfortable, extreme);
    }

    private static bool IsIn(PitchRange range, SungTone tone) => range.Contains(tone.Low.Midi) && range.Contains(tone.High.Midi);
}
