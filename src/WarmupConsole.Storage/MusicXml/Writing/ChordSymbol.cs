using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>A chord symbol above the line.</summary>
/// <param name="Start">From the beginning of the exercise.</param>
/// <param name="Root">Its root, spelled for the key.</param>
/// <param name="Kind">As MusicXML names it.</param>
internal sealed record ChordSymbol(Beats Start, Pitch Root, string Kind)
{
    /// <summary>The chords under an exercise, as its accompaniment plays them.</summary>
    internal static IReadOnlyList<ChordSymbol> Of(Exercise exercise, Rung rung)
    {
        List<ChordSymbol> symbols = [];
        Beats at = Beats.Zero;
        foreach (HarmonyChord chord in Accompaniment.ChordsUnder(exercise))
        {
            if (RomanNumeral.TryParse(chord.Numeral, out RomanNumeral numeral))
            {
                IReadOnlyList<Interval> tones = numeral.Tones(rung.Mode);
                symbols.Add(new(at, rung.Tonic.Transpose(tones[0]), KindOf([.. tones.Skip(1).Select(tone => tone.Semitones - tones[0].Semitones)])));
            }

            at += chord.Length;
        }

        return symbols;
    }

    private static string KindOf(int[] tones) => tones switch
    {
        [4, 7] => "major",
        [3, 7] => "minor",
        [3, 6] => "diminished",
        [4, 7, 10] => "dominant",
        [4, 7, 11] => "major-seventh",
        [3, 7, 10] => "minor-seventh",
        [3, 7, 11] => "major-minor",
        [3, 6, 9] => "diminished-seventh",
        _ => "other",
    };
}
