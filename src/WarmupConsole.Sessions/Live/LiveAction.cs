namespace WarmupConsole.Sessions.Live;

/// <summary>What a director can do while the warm-up runs. Each is one key (see docs/keys.md).</summary>
public enum LiveAction
{
    /// <summary>Start, end the talk, sing the next key, or go on after a hold, whichever is next.</summary>
    GoOn,
    Silence,

    /// <summary>Pause, or go on after a pause.</summary>
    Pause,

    /// <summary>The same rung or round again.</summary>
    Repeat,
    StepBack,
    StepOn,

    /// <summary>One key further than the ladder goes, at its turning point.</summary>
    OneMoreKey,

    /// <summary>Back towards the first key after this rung.</summary>
    TurnRound,
    Faster,
    Slower,

    /// <summary>One beat of the tempo that is wanted; the fourth in a row gives it.</summary>
    TapTempo,

    /// <summary>Switch between going on by itself and waiting at every key.</summary>
    RollOrWait,

    /// <summary>The cue of the key again: where music runs it leads in anew, elsewhere the chord alone.</summary>
    CueAgain,

    /// <summary>A beat more of breath between the keys of this step.</summary>
    LongerBreath,
    ShorterBreath,

    /// <summary>The chord of the key, kept until released by the same action; music that runs is held.</summary>
    HoldChord,

    /// <summary>The same chord part by part: one tone more, from the lowest part upwards.</summary>
    BuildChord,

    /// <summary>The note that the key begins on, to hear drift: now where nothing runs, else after this key, which is sung alone.</summary>
    ProofNote,

    /// <summary>To a key that is named.</summary>
    JumpToKey,

    /// <summary>Only some parts sing in this step, or everyone again.</summary>
    ChooseParts,

    /// <summary>A part sings this step in the other octave, or in its own again.</summary>
    SwapOctave,

    /// <summary>What the piano plays while the choir sings, from the next key of this step on.</summary>
    Accompany,

    /// <summary>Put an exercise in behind the present step.</summary>
    InsertNext,

    /// <summary>Put an exercise in here and introduce it.</summary>
    InsertNow,

    /// <summary>The cut that is offered when it runs late.</summary>
    TakeCut,

    /// <summary>Stay silent and follow what is played, key by key; or lead again.</summary>
    Follow,

    /// <summary>End the warm-up here.</summary>
    End,
}
