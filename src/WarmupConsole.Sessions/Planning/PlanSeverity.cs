namespace WarmupConsole.Sessions.Planning;

/// <summary>How much a remark on a plan weighs.</summary>
public enum PlanSeverity
{
    /// <summary>A thought; the director knows better.</summary>
    Hint,

    /// <summary>Something will not go as planned.</summary>
    Warning,

    /// <summary>Against common practice, or not singable.</summary>
    Error,
}
