namespace WarmupConsole.Sessions.Live;

/// <summary>Where the warm-up is. Pause and silence are a <see cref="Hold"/> beside it.</summary>
public enum LiveState
{
    /// <summary>Loaded; the room still talks.</summary>
    Ready,

    /// <summary>A step is announced; the director explains and goes on when ready.</summary>
    Introduce,

    /// <summary>The tonic chord of the first key sounds.</summary>
    Cue,

    /// <summary>The beats before the first note.</summary>
    CountIn,

    /// <summary>A rung is sung.</summary>
    Rung,

    /// <summary>Between two rungs: the choir breathes, the cue chords lead to the next key.</summary>
    Breath,

    /// <summary>Between two rungs in waiting mode: nothing sounds until the director goes on.</summary>
    Wait,

    /// <summary>A key is sung to what somebody else plays; the console is silent and listens for the next one.</summary>
    Follow,

    /// <summary>A counted phase of a body or breathing exercise.</summary>
    Phase,

    /// <summary>The plan is done or was ended; marks may still be added.</summary>
    Finished,
}
