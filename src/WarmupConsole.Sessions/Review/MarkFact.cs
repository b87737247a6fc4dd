namespace WarmupConsole.Sessions.Review;

/// <summary>A mark as a log states it; all else about it follows from its raw text.</summary>
/// <param name="Id">Its number in the session.</param>
/// <param name="Step">Index of the step it refers to.</param>
/// <param name="Rung">Index of the rung it refers to.</param>
/// <param name="Raw">What was typed.</param>
/// <param name="Nanoseconds">Monotonic time of its first letter.</param>
public sealed record MarkFact(int Id, int Step, int Rung, string Raw, long Nanoseconds);
