using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning;

/// <summary>How much of its range a part sings in a warm-up.</summary>
/// <param name="Part">The part.</param>
/// <param name="Reached">Its lowest and its highest note, or null when it never sings.</param>
/// <param name="Rungs">In how many rungs it sings.</param>
public sealed record PartCoverage(Part Part, PitchRange? Reached, int Rungs)
{
    /// <summary>Semitones of the comfortable range between the lowest and the highest note it reaches, ends included.</summary>
    public int ComfortableSemitones => Reached is not { } reached ? 0 : Math.Max(0,
        Math.Min(reached.High.Midi, Part.Range.Comfortable.High.Midi) - Math.Max(reached.Low.Midi, Part.Range.Comfortable.Low.Midi) + 1);

    /// <summary>Every part of the choir, in its order.</summary>
    public static IReadOnlyList<PartCoverage> Of(Warmup warmup) => [.. warmup.Choir.Parts.Select((part, index) => Of(part, index, warmup))];

    private static PartCoverage Of(Part part, int index, Warmup warmup)
    {
        (Pitch? low, Pitch? high, int rungs) = (null, null, 0);
        foreach (RungPart sung in warmup.Steps.SelectMany(step => step.Ladder.Rungs).Select(rung => rung.Parts[index]).Where(sung => sung.Sings))
        {
            rungs++;
            low = low is { } lowest && lowest.Midi <= sung.Span.Low.Midi ? lowest : sung.Span.Low;
            high = high is { } highest && highest.Midi >= sung.Span.High.Midi ? highest : sung.Span.High;
        }

        return new(part, low is { } from && high is { } to ? new PitchRange(from, to) : null, rungs);
    }
}
