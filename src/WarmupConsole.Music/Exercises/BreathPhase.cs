namespace WarmupConsole.Music.Exercises;

/// <summary>One counted phase of a body or breathing exercise.</summary>
/// <param name="Action">What is done.</param>
/// <param name="Counts">For how many beats at the exercise's tempo; 1–60.</param>
/// <param name="Say">What is said or shown with it ("on ss", "roll the shoulders back"), or empty.</param>
public sealed record BreathPhase(BreathAction Action, int Counts, string Say);
