namespace WarmupConsole.Sessions.Review;

/// <summary>One step as it really went; a step that was led twice is counted together, and one that never began has no time.</summary>
/// <param name="Step">Index in the plan, from 0.</param>
/// <param name="ExerciseId">The exercise.</param>
/// <param name="Title">Its title, or the id when the exercise is unknown.</param>
/// <param name="Spent">All time from its introduction to the next step, holds included.</param>
/// <param name="Talk">The part of it before the first sound or the first phase.</param>
/// <param name="Rungs">Rungs sung to the end.</param>
/// <param name="Rounds">Rounds begun of a body or breathing exercise.</param>
public sealed record ReviewStep(int Step, string ExerciseId, string Title, TimeSpan Spent, TimeSpan Talk, int Rungs, int Rounds)
{
    /// <summary>True when it is led through keys, false when it runs in rounds.</summary>
    public bool HasKeys { get; init; }

    /// <summary>True when a key was sung or a round was done; else it was passed over, or never began.</summary>
    public bool HasWork => Rungs + Rounds > 0;
}
