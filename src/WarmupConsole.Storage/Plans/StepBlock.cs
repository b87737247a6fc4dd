namespace WarmupConsole.Storage.Plans;

/// <summary>The lines of one step.</summary>
/// <param name="Above">Comments and empty lines directly above it.</param>
/// <param name="Lines">The step itself.</param>
internal readonly record struct StepBlock(string Above, string Lines);
