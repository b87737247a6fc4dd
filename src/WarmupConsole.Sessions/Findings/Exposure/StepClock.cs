using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>How long each step took, and how much of it was talk. A step that is begun again after others is a step of its own.</summary>
internal sealed class StepClock
{
    private readonly List<LedStep> before = [];
    private bool isTalk;
    private bool isPaused;
    private bool isOver = true;

    // Of the present step; there is none as long as its exercise is null.
    private string? exercise;
    private TimeSpan talk;
    private TimeSpan spent;
    private bool hasBegun;

    internal IReadOnlyList<LedStep> Steps => [.. before, .. Present];

    private LedStep[] Present => exercise is null ? [] : [new(exercise, talk, spent, hasBegun)];

    /// <param name="record">What happened.</param>
    /// <param name="last">What happened before it, or null.</param>
    internal void Add(SessionRecord record, SessionRecord? last)
    {
        if (!isOver && !isPaused && last is not null && last.Epoch == record.Epoch && record.Monotonic > last.Monotonic)
        {
            TimeSpan time = record.Monotonic - last.Monotonic;
            spent += time;
            talk += isTalk ? time : TimeSpan.Zero;
        }

        switch (record.Event)
        {
            case StepStarted step:
                before.AddRange(Present);
                (exercise, talk, spent, hasBegun) = (step.Exercise, TimeSpan.Zero, TimeSpan.Zero, false);
                (isTalk, isOver) = (true, false);
                break;
            case HoldChanged hold:
                isPaused = hold.Hold == HoldText.Write(Hold.Paused);
                break;
            case RunEnded or StepsOver:
                isOver = true;
                break;
            case LeadInStarted or RungStarted or RoundStarted when exercise is not null:
                (isTalk, hasBegun) = (false, true);
                break;
        }
    }
}
