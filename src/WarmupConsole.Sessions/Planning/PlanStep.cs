using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Sessions.Planning;

/// <summary>One exercise in a plan.</summary>
public sealed record PlanStep
{
    /// <summary>The exercise, from the catalogue or the director's own.</summary>
    public required string ExerciseId { get; init; }

    /// <summary>Seconds of talk before it (0–600), or null for the exercise's own.</summary>
    public int? TalkSeconds { get; init; }

    /// <summary>Null for the exercise's own.</summary>
    public Tempo? Tempo { get; init; }

    /// <summary>The tempo of the last key, reached evenly from key to key; null for the same tempo throughout. Sung exercises only.</summary>
    public Tempo? LastTempo { get; init; }

    /// <summary>The keys; ignored for body and breathing.</summary>
    public LadderSpec Keys { get; init; } = new();

    /// <summary>Rounds of the phases of a body or breathing exercise (1–20), or null for the exercise's own.</summary>
    public int? Rounds { get; init; }

    /// <summary>Beats of breath between two keys, in which the cue chords sound; 1–8.</summary>
    public int BreathBeats { get; init; } = 2;

    /// <summary>What the piano plays; what is left open is as in the plan, then as in the exercise.</summary>
    public PianoWish Piano { get; init; } = PianoWish.None;

    /// <summary>Why the step is there, a sentence each.</summary>
    public IReadOnlyList<string> Because { get; init; } = [];
}
