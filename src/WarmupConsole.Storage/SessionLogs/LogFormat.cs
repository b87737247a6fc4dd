namespace WarmupConsole.Storage.SessionLogs;

/// <summary>The constants of docs/session-log.md.</summary>
internal static class LogFormat
{
    internal const int Version = 1;
    internal const string FileExtension = ".jsonl";
    internal const string LockExtension = ".lock";
    internal const string StartPattern = "yyyy-MM-dd'T'HH-mm-ss";
    internal const string TimePattern = "yyyy-MM-dd'T'HH:mm:ss.fffzzz";
    internal const byte Newline = (byte)'\n';

    /// <summary>Bytes of <c>,"crc":"xxxxxxxx"}</c>.</summary>
    internal const int TailLength = 18;

    internal const int ChecksumDigits = 8;

    /// <summary>How a line of this version begins.</summary>
    internal static ReadOnlySpan<byte> Start => "{\"format\":1,\"seq\":"u8;

    internal static ReadOnlySpan<byte> TailStart => ",\"crc\":\""u8;

    internal static ReadOnlySpan<byte> TailEnd => "\"}"u8;
}
