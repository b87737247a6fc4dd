namespace WarmupConsole.Sessions.Findings.Practice;

/// <summary>How an exercise went, learnt from the logs.</summary>
/// <param name="Id">Of the exercise.</param>
/// <param name="Title">Its title, or its id when it is not among the exercises any more.</param>
/// <param name="Times">How often it was led.</param>
/// <param name="Talk">The usual talk: the middle one of all times.</param>
/// <param name="Spent">The usual time with its talk.</param>
/// <param name="Last">When last.</param>
public sealed record ExercisePractice(string Id, string Title, int Times, TimeSpan Talk, TimeSpan Spent, DateTimeOffset Last);
