namespace WarmupConsole.Sessions.Planning;

/// <summary>Something that can be left out of a warm-up that runs late.</summary>
/// <param name="Step">Number of the step.</param>
/// <param name="Keys">How many keys of its ladder are left, from the first; 0 when the whole step is left out.</param>
/// <param name="Saves">The time that is won.</param>
public sealed record StepCut(int Step, int Keys, TimeSpan Saves)
{
    /// <summary>True when the step is left out; false when only its way back is.</summary>
    public bool IsWhole => Keys == 0;
}
