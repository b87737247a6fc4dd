namespace WarmupConsole.Sessions.Live;

/// <summary>What stops the music without leaving the state. In both nothing sounds; going on leads in to the same rung again.</summary>
public enum Hold
{
    None,

    /// <summary>Interrupted: the clocks of step and warm-up stand still.</summary>
    Paused,

    /// <summary>Silenced to speak or listen: the clocks go on.</summary>
    Silenced,
}
