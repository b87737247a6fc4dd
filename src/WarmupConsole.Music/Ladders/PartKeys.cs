using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Ladders;

/// <summary>In which keys one part can sing a pattern, under what a plan allows.</summary>
/// <param name="Part">The part.</param>
/// <param name="Demands">What its line asks of it.</param>
/// <param name="Allowed">Inside comfortable widened by the reach.</param>
/// <param name="Singing">Allowed widened by the tolerance, but never past extreme: outside it the part rests.</param>
/// <param name="Extreme">Inside extreme.</param>
internal readonly record struct PartKeys(Part Part, ExerciseDemands Demands, KeyWindow Allowed, KeyWindow Singing, KeyWindow Extreme)
{
    /// <summary>Lowest and highest note of its line in a key.</summary>
    internal PitchRange Span(Pitch tonic, int octaveShift = 0)
    {
        Pitch placed = tonic.Octaves(Part.PlacementOctaves + octaveShift);
        return new(placed.Transpose(Demands.Low), placed.Transpose(Demands.High));
    }

    /// <summary>
    /// Reach widens comfortable towards extreme at each end by its share of the distance, rounded down to whole semitones:
    /// half of one semitone asks for nothing more.
    /// </summary>
    internal static PartKeys Of(Part part, ExerciseDemands demands, LadderSpec spec)
    {
        (int low, int high) = (part.Range.Comfortable.Low.Midi, part.Range.Comfortable.High.Midi);
        (int lowest, int highest) = (part.Range.Extreme.Low.Midi, part.Range.Extreme.High.Midi);
        low -= (low - lowest) * spec.ReachPercent / 100;
        high += (highest - high) * spec.ReachPercent / 100;
        int tolerance = spec.ToleranceSemitones;
        return new(
            part,
            demands,
            Window(low, high),
            Window(Math.Max(lowest, low - tolerance), Math.Min(highest, high + tolerance)),
            Window(lowest, highest));

        KeyWindow Window(int from, int to)
        {
            int placement = 12 * part.PlacementOctaves;
            return new(from - demands.Low.Semitones - placement, to - demands.High.Semitones - placement);
        }
    }
}
