using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What the next plan is made from.</summary>
public sealed record NextPlanInput
{
    /// <summary>Who sings.</summary>
    public required Choir Choir { get; init; }

    /// <summary>The plan that is carried on.</summary>
    public required Plan Last { get; init; }

    /// <summary>The catalogue and the director's own exercises, by id; every exercise of the last plan is among them.</summary>
    public required IReadOnlyDictionary<string, Exercise> Exercises { get; init; }

    /// <summary>The last session looked back on, or null when none was logged.</summary>
    public SessionReview? Review { get; init; }

    /// <summary>What the director wants worked on; those done or past their day are passed over.</summary>
    public IReadOnlyList<ChoirNeed> Needs { get; init; } = [];

    /// <summary>The plans before the last one, the oldest first: they tell what the choir knows.</summary>
    public IReadOnlyList<Plan> Earlier { get; init; } = [];

    /// <summary>The day that the new plan is for.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>All plans before the new one.</summary>
    internal IReadOnlyList<Plan> Before => [.. Earlier, Last];

    /// <summary>The day of the last session, or of the last plan when none was logged; null when neither says.</summary>
    internal DateOnly? LastDay => Review is { } review ? DateOnly.FromDateTime(review.Start.DateTime) : Last.Date;

    /// <summary>True for an exercise that an earlier plan had.</summary>
    internal bool IsKnown(string exerciseId) => Before.Any(plan => plan.Steps.Any(step => step.ExerciseId == exerciseId));
}
