namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>One step that was led.</summary>
/// <param name="Exercise">Id of its exercise.</param>
/// <param name="Talk">From its introduction to the first cue chord or round; pauses left out.</param>
/// <param name="Spent">From its introduction to that of the next step; pauses left out.</param>
/// <param name="HasBegun">False when it was passed over.</param>
public sealed record LedStep(string Exercise, TimeSpan Talk, TimeSpan Spent, bool HasBegun);
