using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>
/// A part whose voices had too much to do, and where. It gets less, not more of the same (common practice): nothing beyond what is easy, and at
/// the ends of its range nothing nearer than a whole tone to where it was heard.
/// </summary>
/// <param name="Part">Who.</param>
/// <param name="Pitch">The sounding pitch, or null when none is known.</param>
/// <param name="Words">"sopranos strained on G♭5".</param>
internal sealed record Sparing(Part Part, Pitch? Pitch, string Words)
{
    private const int WholeTone = 2;

    private PitchRange Easy => Part.Range.Comfortable;

    /// <summary>In the upper half of what is easy or above it: what answers it stays below.</summary>
    internal bool IsHigh => Pitch is { } pitch && 2 * pitch.Midi > Easy.Low.Midi + Easy.High.Midi;

    /// <summary>In the lowest quarter of what is easy or below it: what answers it stays above. Between the two there is no way round it.</summary>
    internal bool IsLow => Pitch is { } pitch && pitch.Midi <= Easy.Low.Midi + (Easy.Semitones / 4);

    /// <summary>In the highest or lowest quarter: then the whole warm-up stays away from it.</summary>
    internal bool IsAtAnEnd => IsLow || (Pitch is { } pitch && pitch.Midi >= Easy.High.Midi - (Easy.Semitones / 4));

    /// <summary>The lowest note that answers it.</summary>
    internal int Lowest => IsLow ? Math.Min(Math.Max(Easy.Low.Midi, Pitch!.Value.Midi + WholeTone), Easy.High.Midi) : Easy.Low.Midi;

    /// <summary>The highest note that answers it.</summary>
    internal int Highest => IsHigh ? Math.Max(Math.Min(Easy.High.Midi, Pitch!.Value.Midi - WholeTone), Easy.Low.Midi) : Easy.High.Midi;

    /// <summary>Where the whole warm-up may take the part.</summary>
    private PitchRange Allowed => IsAtAnEnd ? Left : Easy;

    private PitchRange Left => Of(Lowest, Highest);

    /// <summary>What is left of a part that others have narrowed already; there must be something.</summary>
    internal Part Within(Part part)
    {
        PitchRange left = Of(Math.Max(Lowest, part.Range.Comfortable.Low.Midi), Math.Min(Highest, part.Range.Comfortable.High.Midi));
        return part with { Range = new(left, left) };
    }

    /// <summary>True when the part sings it gently and keeps away from where it was heard.</summary>
    internal bool IsAnsweredBy(WarmupStep step) => Gentle.Is(step.Exercise) && Spans(step) is { Length: > 0 } spans && Array.TrueForAll(spans, Left.Contains);

    /// <summary>In how many keys the part sings beyond what is easy or, at an end of its range, near to where it was heard; the way back does not count again.</summary>
    internal int KeysCrossedBy(WarmupStep step)
    {
        PitchRange allowed = Allowed;
        return Spans(step).Where(span => !allowed.Contains(span)).Distinct().Count();
    }

    /// <summary>True when the part sings beyond what is easy somewhere in a step.</summary>
    internal bool IsOverstrainedBy(WarmupStep step) => Array.Exists(Spans(step), span => !Easy.Contains(span));

    /// <summary>True when it keeps the part from a pitch.</summary>
    internal bool KeepsFrom(int midi) => !Allowed.Contains(midi);

    /// <summary>What the part sings in each key of a step.</summary>
    internal PitchRange[] Spans(WarmupStep step) => PartSpans.Of(step, Part.Id);

    private static PitchRange Of(int low, int high) => new(KeySpelling.TonicFor(low, Mode.Major), KeySpelling.TonicFor(high, Mode.Major));
}
