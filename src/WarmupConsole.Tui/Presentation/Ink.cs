namespace WarmupConsole.Tui.Presentation;

/// <summary>What a cell means; the theme turns it into colours, or into styles where there are no colours.</summary>
public enum Ink
{
    Plain,
    Faint,
    Strong,

    /// <summary>The key, in large letters.</summary>
    Key,

    /// <summary>What sounds and moves now: the part that sings, the beat.</summary>
    Live,
    Range,
    Mark,

    /// <summary>Reversed: paused, silenced, trouble.</summary>
    Alert,
}
