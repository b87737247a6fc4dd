namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>A step of the plan in the making.</summary>
/// <param name="Step">The step, its reasons included.</param>
/// <param name="Origin">Its place in the last plan, from 0, or null when it is new.</param>
/// <param name="Answers">The needs that its ladder answers; such a step is neither exchanged nor shortened.</param>
internal sealed record DraftStep(PlanStep Step, int? Origin, IReadOnlyList<Need> Answers)
{
    /// <summary>The first new reason takes the place of last week's.</summary>
    internal DraftStep Because(string reason, bool isFirst) =>
        this with { Step = Step with { Because = isFirst ? [reason] : [.. Step.Because.Where(old => old != reason), reason] } };
}
