using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Sessions.Planning;

/// <summary>The order of one warm-up as its file says it.</summary>
public sealed record Plan
{
    /// <summary>The day it is for, or null.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>What the director calls it, or empty.</summary>
    public string Title { get; init; } = "";

    /// <summary>Minutes the warm-up may take; 5–60.</summary>
    public int Minutes { get; init; } = 15;

    /// <summary>True to go on by itself after each breath; false to wait for the director at every key.</summary>
    public bool Rolling { get; init; } = true;

    /// <summary>What the piano plays in the steps that do not say so themselves.</summary>
    public PianoWish Piano { get; init; } = PianoWish.None;

    /// <summary>Rules of the check that are switched off for this plan.</summary>
    public IReadOnlyList<RuleOff> Off { get; init; } = [];

    /// <summary>Set when there is no warm-up, on purpose; then there are no steps.</summary>
    public BareRehearsal? Bare { get; init; }

    /// <summary>In the order they are led; empty for an open session and a bare rehearsal.</summary>
    public required IReadOnlyList<PlanStep> Steps { get; init; }
}
