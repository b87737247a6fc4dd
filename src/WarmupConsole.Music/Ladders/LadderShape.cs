namespace WarmupConsole.Music.Ladders;

/// <summary>The way a ladder takes through the keys.</summary>
public enum LadderShape
{
    /// <summary>Up to the top, then down again to the start.</summary>
    UpAndBack,
    Up,
    Down,

    /// <summary>Down to the bottom, then up again to the start.</summary>
    DownAndBack,

    /// <summary>From the start alternately one key further up and one further down, as long as either side has keys; it does not come back.</summary>
    OutFromTheMiddle,
}
