using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>From what is written to what sounds.</summary>
/// <param name="Chromatic">Semitones, without octaves.</param>
/// <param name="Octaves">Octaves.</param>
internal readonly record struct Transposition(int Chromatic, int Octaves)
{
    private const int Octave = 12;
    private static readonly (Step Step, int Alteration)[] Sharps =
    [
        (Step.C, 0), (Step.C, 1), (Step.D, 0), (Step.D, 1), (Step.E, 0), (Step.F, 0),
        (Step.F, 1), (Step.G, 0), (Step.G, 1), (Step.A, 0), (Step.A, 1), (Step.B, 0),
    ];

    /// <summary>Keeps the spelling across octaves; what is written in another key is spelled with sharps.</summary>
    internal Pitch Sounding(Pitch written)
    {
        if (Chromatic == 0)
        {
            return written.Octaves(Octaves);
        }

        int midi = written.Midi + Chromatic + (Octave * Octaves);
        int octave = (int)Math.Floor(midi / (double)Octave);
        (Step step, int alteration) = Sharps[midi - (Octave * octave)];
        return new(step, alteration, octave - 1);
    }

    /// <summary>The key signature as it sounds, with as few signs as it can be written with.</summary>
    internal int SoundingFifths(int writtenFifths)
    {
        int fifths = (((writtenFifths + (7 * Chromatic)) % Octave) + Octave) % Octave;
        return Chromatic == 0 ? writtenFifths : fifths > 6 ? fifths - Octave : fifths;
    }
}
