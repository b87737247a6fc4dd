using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;

namespace WarmupConsole.Music.Sounding;

/// <summary>Every way to lay a chord under the hands within the piano's middle.</summary>
public static class GripBook
{
    /// <summary>The left hand lies from C2 up to <see cref="HighestBass"/>.</summary>
    public const int LowestBass = 36;

    /// <summary>G3.</summary>
    public const int HighestBass = 55;

    /// <summary>The right hand lies from D3 up to <see cref="HighestTone"/>.</summary>
    public const int LowestTone = 50;

    /// <summary>C5.</summary>
    public const int HighestTone = 72;

    private const int Octave = 12;

    /// <summary>With the root in the bass; and, where it is allowed, with the third there, which the right hand then leaves out.</summary>
    internal static IReadOnlyList<Grip> For(HarmonyChord chord, Rung rung, bool mayInvert)
    {
        if (!RomanNumeral.TryParse(chord.Numeral, out RomanNumeral numeral))
        {
            throw new ArgumentException($"'{chord.Numeral}' is no chord.", nameof(chord));
        }

        int[] tones = [.. numeral.Tones(rung.Mode).Select(tone => Class(rung.Tonic.Midi + tone.Semitones))];
        (int root, int third, int fifth) = (tones[0], tones[1], tones[2]);
        IEnumerable<Grip> straight = Grips(root, numeral.Seventh ? tones[1..] : tones, isInverted: false);
        IEnumerable<Grip> inverted = !mayInvert ? []
            : numeral.Seventh ? Grips(third, [root, fifth, tones[3]], isInverted: true)
            : Grips(third, [root, root, fifth], isInverted: true).Concat(Grips(third, [root, fifth, fifth], isInverted: true));
        return [.. straight, .. inverted];
    }

    private static IEnumerable<Grip> Grips(int bass, int[] upper, bool isInverted)
    {
        int[] wanted = [.. upper.Order()];
        int[] keys = [.. Enumerable.Range(LowestTone, HighestTone - LowestTone + 1).Where(key => wanted.Contains(Class(key)))];
        return
            from low in keys
            from middle in keys
            where middle > low
            from top in keys
            where top > middle && top - low <= Octave && Fits(wanted, low, middle, top)
            from left in Enumerable.Range(LowestBass, HighestBass - LowestBass + 1)
            where Class(left) == bass && left < low
            select new Grip(left, low, middle, top, isInverted);
    }

    private static bool Fits(int[] wanted, params ReadOnlySpan<int> keys)
    {
        int[] classes = [.. keys];
        for (int i = 0; i < classes.Length; i++)
        {
            classes[i] = Class(classes[i]);
        }

        Array.Sort(classes);
        return classes.AsSpan().SequenceEqual(wanted);
    }

    private static int Class(int midi) => ((midi % Octave) + Octave) % Octave;
}
