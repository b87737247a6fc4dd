namespace WarmupConsole.Sessions.Events;

/// <summary>An exercise was put in while it ran, as a step with the next free number.</summary>
/// <param name="Step">Its number: steps of the plan keep theirs.</param>
/// <param name="Exercise">The exercise's id.</param>
/// <param name="ExerciseYaml">The exercise in the format of the exercise files.</param>
public sealed record StepAdded(int Step, string Exercise, string ExerciseYaml) : SessionEvent;
