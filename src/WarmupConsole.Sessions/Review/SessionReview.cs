using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.Review;

/// <summary>One run looked back on: what was sung, how long it took, what was marked.</summary>
public sealed record SessionReview
{
    /// <summary>How a run ended whose log does not say so.</summary>
    public const string CutOff = "cut off";

    /// <summary>How a run ended that has not.</summary>
    public const string Running = "running";

    /// <summary>Name of the choir.</summary>
    public required string Choir { get; init; }

    /// <summary>File name of the plan, or empty for an open session.</summary>
    public required string PlanName { get; init; }

    /// <summary>Wall time of the first record.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Wall time of the last record.</summary>
    public required DateTimeOffset End { get; init; }

    /// <summary>"finished" or "ended" as the log says, <see cref="CutOff"/> when it says nothing, or <see cref="Running"/> when its writer is still at it.</summary>
    public required string Ending { get; init; }

    /// <summary>Measured time while the console ran: breaks between an interruption and its resumption are left out.</summary>
    public required TimeSpan Spent { get; init; }

    /// <summary>The steps that were begun, in the order of the plan.</summary>
    public required IReadOnlyList<ReviewStep> Steps { get; init; }

    /// <summary>The steps of the plan that never began; empty when the plan is not known.</summary>
    public IReadOnlyList<ReviewStep> NotBegun { get; init; } = [];

    /// <summary>What the director cut, in that order.</summary>
    public IReadOnlyList<ReviewCut> Cuts { get; init; } = [];

    /// <summary>Minutes that the plan gave, or null when it is not known.</summary>
    public int? PlannedMinutes { get; init; }

    /// <summary>Rungs that count as sung, in order: those that were whole, and broken ones that bear a mark.</summary>
    public required IReadOnlyList<SungRung> Rungs { get; init; }

    /// <summary>Marks that were not taken back, part by part, in the order they were made.</summary>
    public required IReadOnlyList<ReviewMark> Marks { get; init; }

    /// <summary>Every pitch that a part sang, part by part in choir order, highest first.</summary>
    public required IReadOnlyList<PitchCount> Counts { get; init; }

    /// <summary>Looks back on the records of one session log.</summary>
    /// <param name="records">In the order of the log.</param>
    /// <param name="choir">The choir, for the order of parts and for its own kinds of mark.</param>
    /// <param name="exercises">The exercises by id as they were when the log was written; of an unknown one only the lowest and highest notes are known.</param>
    /// <param name="plan">The plan that was led, or null; it tells what never began.</param>
    /// <exception cref="ArgumentException">There are no records.</exception>
    public static SessionReview From(IReadOnlyList<SessionRecord> records, Choir choir, IReadOnlyDictionary<string, Exercise> exercises, Plan? plan = null)
    {
        ArgumentNullException.ThrowIfNull(records);
        ArgumentNullException.ThrowIfNull(choir);
        ArgumentNullException.ThrowIfNull(exercises);
        if (records.Count == 0)
        {
            throw new ArgumentException("The session log holds no records: there is nothing to review.", nameof(records));
        }

        ReviewFold fold = new(exercises, choir, plan);
        foreach (SessionRecord record in records)
        {
            fold.Add(record);
        }

        return fold.Finish();
    }
}
