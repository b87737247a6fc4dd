namespace WarmupConsole.Sessions.Planning.Choosing;

/// <summary>One step that a plan may have: an exercise with its keys, tempo and talk settled.</summary>
public sealed record Choice
{
    /// <summary>Number of the exercise, from 0; a plan has each at most once.</summary>
    public required int Exercise { get; init; }

    /// <summary>The part of the warm-up that it belongs to, one for all choices of an exercise.</summary>
    public required Band Band { get; init; }

    /// <summary>All of it: talk, lead-in, rungs or rounds; above 0.</summary>
    public required int Milliseconds { get; init; }

    /// <summary>Points for the step itself, whatever else is in the plan; may be negative.</summary>
    public required int Own { get; init; }

    /// <summary>Which aims it serves, as indices into <see cref="PlanProblem.Aims"/>, each once.</summary>
    public IReadOnlyList<int> Aims { get; init; } = [];

    /// <summary>How it begins.</summary>
    public FirstVowel FirstVowel { get; init; }

    /// <summary>True for an exercise that the choir never sang, in all its choices.</summary>
    public bool IsNew { get; init; }

    /// <summary>True when it goes to the extremes, which belong to the last third.</summary>
    public bool IsPeak { get; init; }
}
