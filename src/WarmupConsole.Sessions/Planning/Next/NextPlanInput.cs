using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What the next plan is made from.</summary>
public sealed record NextPlanInput
{
    private const int LeastMinutes = 10;
    private const int MostMinutes = 30;

    /// <summary>Who sings tonight, with the ranges of the day.</summary>
    public required Choir Choir { get; init; }

    /// <summary>The plan that the new one is compared with, or null when there is none.</summary>
    public Plan? Last { get; init; }

    /// <summary>The catalogue and the director's own exercises, by id.</summary>
    public required IReadOnlyDictionary<string, Exercise> Exercises { get; init; }

    /// <summary>The last session looked back on, or null when none was logged.</summary>
    public SessionReview? Review { get; init; }

    /// <summary>What the logs of the last weeks show, strongest first, without what was dismissed.</summary>
    public IReadOnlyList<Finding> Findings { get; init; } = [];

    /// <summary>What the director wants worked on; those done or past their day are passed over.</summary>
    public IReadOnlyList<ChoirNeed> Needs { get; init; } = [];

    /// <summary>The plans before the last one, the oldest first: they tell what the choir knows.</summary>
    public IReadOnlyList<Plan> Earlier { get; init; } = [];

    /// <summary>What the logs say was led, the oldest first.</summary>
    public IReadOnlyList<LedSession> Led { get; init; } = [];

    /// <summary>Seconds of talk that an exercise took in the logs, by its id.</summary>
    public IReadOnlyDictionary<string, int> LearntTalk { get; init; } = new Dictionary<string, int>();

    /// <summary>The day that the new plan is for.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>How long the warm-up may take, 5–60 minutes; null for those of the last plan, else an eighth of the rehearsal.</summary>
    public int? Minutes { get; init; }

    /// <summary>What the director wants most of, or null.</summary>
    public PlanFocus? Focus { get; init; }

    /// <summary>How the choir is tonight.</summary>
    public Tonight Tonight { get; init; } = Tonight.AsUsual;

    /// <summary>1 for the best plan; 2 for one that is unlike it, and so on; 1–9.</summary>
    public int Variant { get; init; } = 1;

    /// <summary>All plans before the new one.</summary>
    internal IReadOnlyList<Plan> Before => Last is null ? Earlier : [.. Earlier, Last];

    /// <summary>The day of the last session, or of the last plan when none was logged; null when neither says.</summary>
    internal DateOnly? LastDay => Review is { } review ? DateOnly.FromDateTime(review.Start.DateTime) : Last?.Date;

    /// <summary>Minutes of the new plan.</summary>
    internal int MinutesOf => Minutes ?? (Last is { } last ? Math.Clamp(last.Minutes, LeastMinutes, MostMinutes) : UsualMinutes(Choir));

    /// <summary>An eighth of the rehearsal, 10 at least and 30 at most (common practice).</summary>
    public static int UsualMinutes(Choir choir)
    {
        ArgumentNullException.ThrowIfNull(choir);
        return Math.Clamp((choir.RehearsalMinutes + 4) / 8, LeastMinutes, MostMinutes);
    }
}
