using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.App.Running;

/// <summary>A log that was read, or tried to be.</summary>
/// <param name="Name">Of its file.</param>
/// <param name="LeftOut">What of it could not be used, in sentences.</param>
internal sealed record ReadSession(string Name, IReadOnlyList<string> LeftOut)
{
    /// <summary>What it holds, or null when it cannot be understood.</summary>
    internal SungSession? Session { get; init; }

    /// <summary>When its first record was written, and the checksum of that line: what tells it from other runs, without its long texts being kept.</summary>
    internal (DateTimeOffset At, ulong Checksum) Run { get; init; }

    /// <summary>Records that were whole.</summary>
    internal int Records { get; init; }
}
