namespace WarmupConsole.Storage.SessionLogs;

/// <summary>A piece of a log that was not read.</summary>
/// <param name="Offset">Byte at which it begins.</param>
/// <param name="Length">Bytes; 0 for a gap.</param>
/// <param name="Kind">Why.</param>
/// <param name="Sentence">Why, in words.</param>
public sealed record LogDamage(long Offset, long Length, DamageKind Kind, string Sentence)
{
    /// <summary>True for what a crash or a power cut leaves behind in a healthy file.</summary>
    public bool IsNormal => Kind is DamageKind.TornTail or DamageKind.CutOff;
}
