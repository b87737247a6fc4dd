using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Music.Ladders;

/// <summary>What a plan says about the keys of a step.</summary>
public sealed record LadderSpec
{
    /// <summary>The value of <see cref="Limit"/> that stops where the first part would leave its allowed range.</summary>
    public const string Everyone = "everyone";

    /// <summary>The value of <see cref="Limit"/> that goes on as long as one part may sing.</summary>
    public const string AnyPart = "any";

    /// <summary>First tonic as written for parts with placement 0; null for middle C or the nearest key that fits.</summary>
    public Pitch? Start { get; init; }

    public LadderShape Shape { get; init; } = LadderShape.UpAndBack;

    /// <summary><see cref="Everyone"/>, <see cref="AnyPart"/>, or the id of a part or group.</summary>
    public string Limit { get; init; } = Everyone;

    /// <summary>How far beyond comfortable, towards extreme, keys may go: 0–100 %.</summary>
    public int ReachPercent { get; init; }

    /// <summary>Semitones a part keeps singing beyond its own allowed range (never past its extreme) before it rests; 0–12.</summary>
    public int ToleranceSemitones { get; init; } = 2;

    /// <summary>Semitones from one key to the next; 1–12, a semitone by common practice.</summary>
    public int StepSemitones { get; init; } = 1;

    /// <summary>True when a part that would rest takes the pattern an octave lower or higher instead, where it can sing that.</summary>
    public bool TakesOctave { get; init; }

    /// <summary>Most keys on the way from the start to the turning point (out from the middle: of both sides together), or null for as many as fit; 1–24.</summary>
    public int? MostKeys { get; init; }
}
