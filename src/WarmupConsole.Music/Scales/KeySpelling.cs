using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Music.Scales;

/// <summary>
/// Names a sounding tonic. The name whose key signature has the fewest accidentals wins: D♭ major rather than C♯ (5 flats,
/// 7 sharps), C♯ minor rather than D♭. Six flats and six sharps tie; then the flats win (G♭ major, E♭ minor), because the
/// keys on either side in a rising major ladder, and the choir's ear for "a semitone higher", are written in flats too.
/// </summary>
public static class KeySpelling
{
    private const int Semitones = 12;
    private static readonly (Step Step, int Alteration)[][] Names = [.. Enum.GetValues<Mode>().Select(NamesIn)];

    /// <summary>The spelled tonic that sounds as a MIDI number.</summary>
    public static Pitch TonicFor(int midi, Mode mode)
    {
        (Step step, int alteration) = Names[(int)mode][((midi % Semitones) + Semitones) % Semitones];
        int natural = midi - alteration;
        return new(step, alteration, (int)Math.Floor(natural / (double)Semitones) - 1);
    }

    private static (Step Step, int Alteration)[] NamesIn(Mode mode) =>
        [.. Enumerable.Range(0, Semitones).Select(pitchClass => BestName(pitchClass, mode))];

    private static (Step Step, int Alteration) BestName(int pitchClass, Mode mode) =>
        (from step in Enum.GetValues<Step>()
         from alteration in new[] { 0, -1, 1 }
         let tonic = new Pitch(step, alteration, 4)
         where tonic.Midi % Semitones == pitchClass
         let fifths = Key.Of(tonic, mode).Fifths
         orderby Math.Abs(fifths), fifths
         select (step, alteration)).First();
}
