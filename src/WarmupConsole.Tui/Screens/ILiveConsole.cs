using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Screens;

/// <summary>The running session as the screen sees it: it reads, and posts what was pressed. Nothing blocks.</summary>
public interface ILiveConsole
{
    /// <summary>Raised, on any thread, after <see cref="Session"/> or <see cref="Status"/> changed.</summary>
    event Action? Changed;

    LiveSession Session { get; }

    ConsoleStatus Status { get; }

    /// <summary>Monotonic time now, for timers and the beat dot.</summary>
    Moment Now { get; }

    /// <summary>Hands an input to the host's queue.</summary>
    void Post(LiveInput input);

    /// <summary>Why an action would do nothing now, in words; null when it would act.</summary>
    string? WhyNot(LiveAction action);
}
