using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Text;

namespace WarmupConsole.Music.Voices;

/// <summary>Ranges in and out: "C4-G5".</summary>
public static class PitchRangeText
{
    /// <summary>Reads two pitches with a hyphen or dash between them, the lower first.</summary>
    public static Parsed<PitchRange> Parse(string text) => Parse(text, Pitch.TryParse);

    /// <summary>The same, in the names of a choir.</summary>
    public static Parsed<PitchRange> Parse(string text, NoteNaming notes) => Parse(text, notes.TryParse);

    /// <summary>In ASCII: "Bb2-D4".</summary>
    public static string Write(PitchRange range) => $"{range.Low.ToAscii()}-{range.High.ToAscii()}";

    private static Parsed<PitchRange> Parse(string text, PitchReading read)
    {
        for (int at = 1; at < text.Length; at++)
        {
            if (text[at] is '-' or '–' && read(text[..at], out Pitch low) && read(text[(at + 1)..], out Pitch high))
            {
                return low.Midi <= high.Midi
                    ? ParsedFactory.Value(new PitchRange(low, high))
                    : ParsedFactory.Error<PitchRange>(text, MusicTextErrors.RangeOrder(low.ToAscii(), high.ToAscii()));
            }
        }

        return ParsedFactory.Error<PitchRange>(text, MusicTextErrors.Range(text));
    }

    private delegate bool PitchReading(string text, out Pitch pitch);
}
