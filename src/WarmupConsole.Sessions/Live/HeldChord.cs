using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Live;

/// <summary>The tonic chord of a key laid out for the parts that sing in it, from the lowest part upwards.</summary>
internal static class HeldChord
{
    /// <summary>Root, fifth and third in turn: a fourth part doubles the root (common practice).</summary>
    private static readonly int[] Degrees = [1, 5, 3];

    /// <summary>A tone for each part, the lowest part first; of all parts when none sings.</summary>
    public static IReadOnlyList<(Part Part, int Midi)> Of(Rung rung)
    {
        RungPart[] singing = [.. rung.Parts.Where(part => part.Sings)];
        IEnumerable<Part> upwards = (singing.Length > 0 ? singing : rung.Parts).Reverse().Select(part => part.Part);
        return [.. upwards.Select((part, index) => (part, Nearest(Middle(part.Range.Comfortable), rung.Tonic.Midi + ModeData.Semitones(rung.Mode, Degrees[index % Degrees.Length]))))];
    }

    /// <summary>A comfortable range is wider than the half octave that this may lie away from its middle.</summary>
    private static int Nearest(int middle, int tone) => tone + (12 * (int)Math.Round((middle - tone) / 12.0));

    private static int Middle(PitchRange range) => (range.Low.Midi + range.High.Midi) / 2;
}
