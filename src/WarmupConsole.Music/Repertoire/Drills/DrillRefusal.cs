namespace WarmupConsole.Music.Repertoire.Drills;

/// <summary>Why no drill can be made of some bars.</summary>
public enum DrillRefusal
{
    NothingSung,

    /// <summary>More notes than a pattern may have.</summary>
    TooLong,

    /// <summary>No key lies within what the part can sing at all.</summary>
    BeyondThePart,
}
