using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Sounding;

/// <summary>The cue chords to a key as a pianist reads them, from the root upwards; <see cref="CueChords"/> lays them out.</summary>
/// <param name="Dominant">The dominant seventh that leads to the key.</param>
/// <param name="Tonic">The tonic chord.</param>
public sealed record SpelledCue(IReadOnlyList<Pitch> Dominant, IReadOnlyList<Pitch> Tonic)
{
    private static readonly Degree[] Triad = [Degree.Tonic, new(3, 0, 0), new(5, 0, 0)];

    /// <summary>The chords before a rung.</summary>
    public static SpelledCue Of(Rung rung)
    {
        ArgumentNullException.ThrowIfNull(rung);
        Key key = Key.Of(rung.Tonic, rung.Mode);
        return new(key.DominantSeventh(rung.Tonic.Octave), [.. Triad.Select(degree => key.PitchOf(degree, rung.Tonic.Octave))]);
    }
}
