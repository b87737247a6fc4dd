using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Tests.Sessions.Findings.Seasons;

/// <summary>A simulated season: the logs, and what was hidden in them.</summary>
internal sealed record Season(IReadOnlyList<IReadOnlyList<SessionRecord>> Logs, IReadOnlyList<Weakness> Hidden);
