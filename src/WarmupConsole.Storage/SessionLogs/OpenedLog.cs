using System.Diagnostics.CodeAnalysis;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>A log opened for writing, or why not.</summary>
/// <param name="File">Null when refused.</param>
/// <param name="Sentence">What was found or why it was refused, in words; empty for a new log.</param>
public sealed record OpenedLog(SessionLogFile? File, string Sentence)
{
    [MemberNotNullWhen(true, nameof(File))]
    public bool IsOpen => File is not null;
}
