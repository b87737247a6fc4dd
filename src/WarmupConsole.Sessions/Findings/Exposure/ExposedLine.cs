using System.Collections.Immutable;

namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>What one part is asked for in one key of one exercise. Rungs that ask for the same share one line.</summary>
public sealed class ExposedLine
{
    /// <summary>Equal when part, exercise and all pitches are.</summary>
    internal static readonly IEqualityComparer<ExposedLine> ByContent = EqualityComparer<ExposedLine>.Create(
        (a, b) => a is not null && b is not null && a.pitches == b.pitches && a.Part == b.Part && a.Exercise == b.Exercise && a.Pitches.SequenceEqual(b.Pitches),
        line => HashCode.Combine(line.Part, line.Exercise, line.pitches));

    private readonly UInt128 pitches;

    /// <param name="part">Id of the part.</param>
    /// <param name="exercise">Id of the exercise.</param>
    /// <param name="asked">Its different pitches in any order, each within 0–127.</param>
    public ExposedLine(string part, string exercise, IReadOnlyList<ExposedPitch> asked)
    {
        ArgumentNullException.ThrowIfNull(asked);
        (Part, Exercise) = (part, exercise);
        Pitches = [.. asked.OrderBy(pitch => pitch.Midi)];
        pitches = Pitches.Aggregate(UInt128.Zero, (set, pitch) => set | (UInt128.One << pitch.Midi));
    }

    /// <summary>Id of the part that sings it.</summary>
    public string Part { get; }

    /// <summary>Id of the exercise it belongs to.</summary>
    public string Exercise { get; }

    /// <summary>Its different pitches, lowest first; never empty.</summary>
    public ImmutableArray<ExposedPitch> Pitches { get; }

    /// <summary>True when it asks for this pitch.</summary>
    /// <param name="midi">MIDI number; outside 0–127 nothing is asked.</param>
    public bool Has(int midi) => midi is >= 0 and <= 127 && ((pitches >> midi) & UInt128.One) != UInt128.Zero;
}
