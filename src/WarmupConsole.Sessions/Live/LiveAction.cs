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

    /// <summary>End the warm-up here.</summary>
    End,
}
