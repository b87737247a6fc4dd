namespace WarmupConsole.Tui.Planning;

/// <summary>What the keys of the planning screen mean at the moment.</summary>
public enum PlanMode
{
    /// <summary>The list of steps.</summary>
    Steps,

    /// <summary>The fields of one step.</summary>
    Fields,

    /// <summary>The catalogue, to put an exercise in.</summary>
    PutIn,

    /// <summary>The catalogue, to put another exercise in a step's place.</summary>
    Replace,
}
