namespace WarmupConsole.Music.Voices;

/// <summary>Which end of a range is looked for, in this order.</summary>
public enum RangeStage
{
    /// <summary>Upwards as far as the part sings with ease.</summary>
    EasyUp,

    /// <summary>On from there as far as it sings at all.</summary>
    UtmostUp,

    /// <summary>Downwards as far as the part sings with ease.</summary>
    EasyDown,

    /// <summary>On from there as far as it sings at all.</summary>
    UtmostDown,

    /// <summary>All four ends are found.</summary>
    Done,
}
