using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>How long each step took, and how much of it was talk. A step that is begun again after others is a step of its own.</summary>
internal sealed class StepClock
{
    private readonly List<LedStep> steps = [];
    private bool isTalk;
    private bool isPaused;
    private bool isOver = true;

    internal IReadOnlyList<LedStep> Steps => steps;

    /// <param name="record">What happened.</param>
    /// <param name="last">What happened before it, or null.</param>
    internal void Add(SessionRecord record, SessionRecord? last)
    {
        if (!isOver && !isPaused && last is not null && last.Epoch == record.Epoch && record.Monotonic > last.Monotonic)
        {
            Spend(record.Monotonic - last.Monotonic);
        }

        switch (record.Event)
        {
            case StepStarted step:
                steps.Add(new(step.Exercise, TimeSpan.Zero, TimeSpan.Zero, false));
                (isTalk, isOver) = (true, false);
                break;
            case HoldChanged hold:
                isPaused = hold.Hold == HoldText.Write(Hold.Paused);
                break;
            case RunEnded or StepsOver:
                isOver = true;
                break;
            case LeadInStarted or RungStarted or RoundStarted when steps.Count > 0:
                isTalk = false;
                steps[^1] = steps[^1] with { HasBegun = true };
                break;
        }
    }

    private void Spend(TimeSpan time)
    {
        LedStep step = steps[^1];
        steps[^1] = step with { Spent = step.Spent + time, Talk = step.Talk + (isTalk ? time : TimeSpan.Zero) };
    }
}
