using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Live;

/// <summary>Time spent, kept as sums up to a moment so that a paused clock stands still.</summary>
/// <param name="WholeSpent">Spent in the warm-up up to <paramref name="Since"/>.</param>
/// <param name="StepSpent">Spent in the present step up to <paramref name="Since"/>.</param>
/// <param name="Since">From when on time is to be added.</param>
/// <param name="IsRunning">False before the start, in a pause and at the end.</param>
public sealed record LiveClocks(TimeSpan WholeSpent, TimeSpan StepSpent, Moment Since, bool IsRunning)
{
    /// <summary>Spent in the warm-up at a moment.</summary>
    public TimeSpan WholeAt(Moment now) => WholeSpent + Added(now);

    /// <summary>Spent in the present step at a moment.</summary>
    public TimeSpan StepAt(Moment now) => StepSpent + Added(now);

    /// <summary>The same sums, settled at a moment, running or not from there on.</summary>
    public LiveClocks At(Moment now, bool running) => new(WholeAt(now), StepAt(now), now, running);

    /// <summary>The step's clock starts again at zero.</summary>
    public LiveClocks NewStep(Moment now) => At(now, IsRunning) with { StepSpent = TimeSpan.Zero };

    private TimeSpan Added(Moment now) => IsRunning && now > Since ? now - Since : TimeSpan.Zero;
}
