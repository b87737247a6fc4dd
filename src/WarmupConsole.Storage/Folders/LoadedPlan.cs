using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Storage.Folders;

/// <summary>A plan with the file it came from and its text, which the session log keeps.</summary>
public sealed record LoadedPlan(Plan Plan, string Path, string Yaml);
