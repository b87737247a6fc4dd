namespace WarmupConsole.Sessions.Planning.Editing;

/// <summary>What of a step can be changed one notch at a time.</summary>
public enum StepField
{
    Start,
    Shape,
    Limit,
    Reach,
    Tolerance,
    MostKeys,
    By,
    Octave,
    Tempo,
    Breath,
    Rounds,
    Talk,
}
