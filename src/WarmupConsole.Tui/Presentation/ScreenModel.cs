using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tui.Presentation;

/// <summary>All that a screenful depends on, besides its size. Equal models draw equal screens.</summary>
public sealed record ScreenModel(LiveSession Session, ConsoleStatus Status, MarkLine Line, Moment Now)
{
    /// <summary>The screen's own word to the director (a key that does nothing now); the session's own stands if it is newer.</summary>
    public Notice? OwnNotice { get; init; }

    /// <summary>The line that asks for something, in the place of the mark line, or null.</summary>
    public PromptLine? Prompt { get; init; }

    /// <summary>Titles of the exercises that the prompt has found.</summary>
    public IReadOnlyList<string> Found { get; init; } = [];

    public bool HelpOpen { get; init; }

    /// <summary>The card of the tour that is shown, from 0; null without a tour.</summary>
    public int? Tour { get; init; }

    public IReadOnlyList<KeyHint> Keys { get; init; } = [];

    /// <summary>How this choir names its notes.</summary>
    public NoteNaming Notes => Session.Warmup.Choir.Notes;

    public Exercise? Exercise => Session.Step?.Exercise;

    public bool IsSung => Exercise?.IsSung ?? false;

    public BeatCount? Beat => BeatCount.At(Session, Now);

    /// <summary>Between two keys the screen looks ahead: the piano leads to the next one already.</summary>
    public int ShownIndex => IsBetweenKeys ? Session.RungIndex + 1 : Session.RungIndex;

    public bool IsBetweenKeys => Session.State is LiveState.Breath or LiveState.Wait && Session.NextRung is not null;

    public Rung? Shown => RungAt(ShownIndex);

    public Rung? AfterShown => RungAt(ShownIndex + 1);

    public BreathPhase? Phase => Exercise is { } exercise && Session.PhaseIndex < exercise.Phases.Count ? exercise.Phases[Session.PhaseIndex] : null;

    public Notice? Notice => (OwnNotice, Session.Notice) switch
    {
        ({ } own, { } theirs) => own.At >= theirs.At ? own : theirs,
        (var own, var theirs) => own ?? theirs,
    };

    /// <summary>The notice, unless the warm-up has ended since: then its key or step is past.</summary>
    public Notice? CurrentNotice => Notice is { } notice && (Session.State != LiveState.Finished || notice.At >= Session.Clocks.Since) ? notice : null;

    /// <summary>True for a step in which no key fits, or that has nothing to lead.</summary>
    public bool HasNothingToLead => Exercise is { Phases.Count: 0 } && Session.Rungs.Count == 0;

    private Rung? RungAt(int index) => index < Session.Rungs.Count ? Session.Rungs[index] : null;
}
