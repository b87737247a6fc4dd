namespace WarmupConsole.Sessions.Choirs;

/// <summary>How much strength the choir brings this evening.</summary>
public enum Energy
{
    Usual,
    Low,

    /// <summary>Noted, and nothing more: a good evening widens no range.</summary>
    High,
}
