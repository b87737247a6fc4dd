using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Live;

/// <summary>What the host must do after an input. Values only; performing them is the host's work, in order.</summary>
public abstract record LiveEffect
{
    private LiveEffect()
    {
    }

    /// <summary>Beats mean these moments from now on, also for notes already handed over.</summary>
    public sealed record SetTimeline(long Generation, Timeline Timeline) : LiveEffect;

    /// <summary>Notes to sound, at beats of the timeline.</summary>
    public sealed record Play(long Generation, IReadOnlyList<ScoreNote> Notes) : LiveEffect;

    /// <summary>Stop every note at once and forget all notes of earlier generations.</summary>
    public sealed record Silence(long Generation) : LiveEffect;

    /// <summary>Write to the session log.</summary>
    public sealed record Record(SessionEvent Event) : LiveEffect;
}
