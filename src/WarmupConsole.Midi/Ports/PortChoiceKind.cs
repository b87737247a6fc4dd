namespace WarmupConsole.Midi.Ports;

/// <summary>How the director chooses a port; the values stand in the player protocol.</summary>
public enum PortChoiceKind
{
    /// <summary>The first port that looks like an instrument; with none, nothing sounds.</summary>
    First = 0,

    /// <summary>The first port whose name contains the text.</summary>
    Named = 1,

    /// <summary>No port: nothing sounds.</summary>
    None = 2,
}
