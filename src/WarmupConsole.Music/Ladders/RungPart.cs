using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Ladders;

/// <summary>What one part does in one rung.</summary>
/// <param name="Part">The part.</param>
/// <param name="Sings">False when it rests because the key lies beyond what it is allowed.</param>
/// <param name="Span">Lowest and highest sounding note the pattern asks of it in this key, in its placement.</param>
public sealed record RungPart(Part Part, bool Sings, PitchRange Span)
{
    /// <summary>Octaves away from its placement: −1 or 1 where it takes the octave instead of resting, else 0.</summary>
    public int OctaveShift { get; init; }

    /// <summary>Octaves between the pattern as written and as the part sings it here.</summary>
    public int Octaves => Part.PlacementOctaves + OctaveShift;
}
