using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Hands;
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

    /// <summary>What can be put in: the catalogue and the choir's own.</summary>
    IReadOnlyList<Exercise> Exercises { get; }

    /// <summary>Puts an exercise in, now or next.</summary>
    void Insert(Exercise exercise, bool now);

    /// <summary>The first picture stands: what takes longer to find out may begin now.</summary>
    void FirstPictureStands();

    /// <summary>True where the tour is to be given at the start.</summary>
    bool GivesTour { get; }

    /// <summary>The tour was seen, or passed over.</summary>
    void TourIsOver();

    /// <summary>The screen is about to be left for the planning screen.</summary>
    void AskForPlan();

    /// <summary>The key of the piano that was struck last, or null.</summary>
    PlayedKey? NewestKey { get; }

    /// <summary>The next control that is pressed is to do this; null forgets all of them.</summary>
    void Learn(PedalUse? use);

    /// <summary>Why an action would do nothing now, in words; null when it would act.</summary>
    string? WhyNot(LiveAction action);
}
