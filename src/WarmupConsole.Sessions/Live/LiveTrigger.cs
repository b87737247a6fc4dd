namespace WarmupConsole.Sessions.Live;

/// <summary>What drives the machine: the director's actions, and time.</summary>
internal enum LiveTrigger
{
    GoOn = LiveAction.GoOn,
    Silence = LiveAction.Silence,
    Pause = LiveAction.Pause,
    Repeat = LiveAction.Repeat,
    StepBack = LiveAction.StepBack,
    StepOn = LiveAction.StepOn,
    OneMoreKey = LiveAction.OneMoreKey,
    TurnRound = LiveAction.TurnRound,
    Faster = LiveAction.Faster,
    Slower = LiveAction.Slower,
    TapTempo = LiveAction.TapTempo,
    RollOrWait = LiveAction.RollOrWait,
    CueAgain = LiveAction.CueAgain,
    LongerBreath = LiveAction.LongerBreath,
    ShorterBreath = LiveAction.ShorterBreath,
    HoldChord = LiveAction.HoldChord,
    BuildChord = LiveAction.BuildChord,
    ProofNote = LiveAction.ProofNote,
    JumpToKey = LiveAction.JumpToKey,
    ChooseParts = LiveAction.ChooseParts,
    SwapOctave = LiveAction.SwapOctave,
    Accompany = LiveAction.Accompany,
    InsertNext = LiveAction.InsertNext,
    InsertNow = LiveAction.InsertNow,
    TakeCut = LiveAction.TakeCut,
    Follow = LiveAction.Follow,
    End = LiveAction.End,

    /// <summary>The beats of the present state are over.</summary>
    TimeElapsed,

    /// <summary>A key was recognised in what is played.</summary>
    KeyHeard,

    /// <summary>The cue chords to the next key are due at the player.</summary>
    CueDue,
}
