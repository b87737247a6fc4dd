namespace WarmupConsole.Music.Exercises;

/// <summary>What is done in a phase of a body or breathing exercise.</summary>
public enum BreathAction
{
    In,
    Hold,
    Out,
    Rest,

    /// <summary>A movement of the body.</summary>
    Move,
}
