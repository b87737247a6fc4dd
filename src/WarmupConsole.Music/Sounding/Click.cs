namespace WarmupConsole.Music.Sounding;

/// <summary>Which beats are tapped.</summary>
public enum Click
{
    None,

    /// <summary>Those between the cue chord and the first note.</summary>
    CountIn,

    /// <summary>Those, and every beat that is sung.</summary>
    EveryBeat,
}
