namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>A step of the plan in the making.</summary>
/// <param name="Step">The step, its reasons included.</param>
/// <param name="Origin">Its place in the last plan, from 0, or null when it is new.</param>
/// <param name="Answers">The needs that its ladder answers; such a step is neither exchanged nor shortened.</param>
internal sealed record DraftStep(PlanStep Step, int? Origin, IReadOnlyList<Need> Answers)
{
    /// <summary>True for a step that is there for a reason of its own and is not exchanged: last time never came to it, or it mends the plan.</summary>
    internal bool IsSettled { get; init; }

    internal DraftStep Because(string reason) => this with { Step = Step with { Because = [.. Step.Because.Where(old => old != reason), reason] } };

    internal DraftStep OnlyBecause(string reason) => this with { Step = Step with { Because = [reason] } };
}
