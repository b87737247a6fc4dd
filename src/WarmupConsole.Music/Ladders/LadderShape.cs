namespace WarmupConsole.Music.Ladders;

/// <summary>The way a ladder takes through the keys.</summary>
public enum LadderShape
{
    /// <summary>Up by semitones to the top, then down again to the start.</summary>
    UpAndBack,
    Up,
    Down,

    /// <summary>Down by semitones to the bottom, then up again to the start.</summary>
    DownAndBack,
}
