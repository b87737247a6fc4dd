namespace WarmupConsole.Music.Voices;

/// <summary>What the director says about the note that was just sung.</summary>
public enum RangeAnswer
{
    /// <summary>Good; a half-step further.</summary>
    StillGood,

    /// <summary>Good, and the last one.</summary>
    LastOne,

    /// <summary>No more: the one before was the last.</summary>
    NotThisOne,
}
