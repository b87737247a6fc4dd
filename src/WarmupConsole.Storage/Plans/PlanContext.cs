using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Storage.Plans;

/// <summary>What the names in a plan may refer to.</summary>
public sealed record PlanContext(IReadOnlyList<Exercise> Exercises, Choir Choir);
