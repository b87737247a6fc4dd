namespace WarmupConsole.Sessions.Findings;

/// <summary>How a finding changes over the weeks.</summary>
public enum TrendDirection
{
    /// <summary>Too few sessions or exposures, or the data allow several answers.</summary>
    TooEarly,

    /// <summary>Marked less often than before.</summary>
    Better,

    /// <summary>No difference that matters.</summary>
    Same,

    /// <summary>Marked more often than before.</summary>
    Worse,
}
