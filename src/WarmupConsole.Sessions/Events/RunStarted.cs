namespace WarmupConsole.Sessions.Events;

/// <summary>The first record of a log: what was run, kept as text so that the log explains itself for ever.</summary>
/// <param name="App">Program version.</param>
/// <param name="Choir">Name of the choir.</param>
/// <param name="PlanName">File name of the plan, or empty without one.</param>
/// <param name="ChoirYaml">choir.yaml as it was.</param>
/// <param name="PlanYaml">The plan as it was, or empty.</param>
/// <param name="ExercisesYaml">The exercises used, in the format of the exercise files.</param>
public sealed record RunStarted(string App, string Choir, string PlanName, string ChoirYaml, string PlanYaml, string ExercisesYaml) : SessionEvent;
