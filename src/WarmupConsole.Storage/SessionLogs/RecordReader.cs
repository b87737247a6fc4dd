using System.Buffers.Text;
using System.IO.Hashing;
using System.Text.Json;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>Judges one line by itself: a record, or why not.</summary>
internal static class RecordReader
{
    /// <summary>More than any event has; a line with more is read as well.</summary>
    private const int UsualFields = 16;

    internal static (SessionRecord? Record, DamageKind Fault) Read(ReadOnlySpan<byte> line)
    {
        if (!EndsInChecksum(line, out uint stated))
        {
            return (null, DamageKind.CutOff);
        }

        return Crc32.HashToUInt32(line[..^LogFormat.TailLength]) == stated ? Parse(line) : (null, DamageKind.BadChecksum);
    }

    private static bool EndsInChecksum(ReadOnlySpan<byte> line, out uint stated)
    {
        stated = 0;
        if (line.Length <= LogFormat.TailLength)
        {
            return false;
        }

        ReadOnlySpan<byte> tail = line[^LogFormat.TailLength..];
        ReadOnlySpan<byte> digits = tail.Slice(LogFormat.TailStart.Length, LogFormat.ChecksumDigits);
        return tail.StartsWith(LogFormat.TailStart) && tail.EndsWith(LogFormat.TailEnd)
            && !digits.ContainsAnyInRange((byte)'A', (byte)'F')
            && Utf8Parser.TryParse(digits, out stated, out int used, 'x') && used == LogFormat.ChecksumDigits;
    }

    private static (SessionRecord? Record, DamageKind Fault) Parse(ReadOnlySpan<byte> line)
    {
        try
        {
            RecordFields fields = new(line, stackalloc RecordFields.Place[UsualFields]);
            RecordEnvelope envelope = RecordEnvelope.Read(line, ref fields);
            return envelope.Format > LogFormat.Version ? (null, DamageKind.NewerFormat) : Parse(envelope, fields);
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException or FormatException)
        {
            return (null, DamageKind.NotARecord);
        }
    }

    private static (SessionRecord? Record, DamageKind Fault) Parse(RecordEnvelope envelope, in RecordFields fields)
    {
        if (envelope is not { Format: LogFormat.Version, Type.Length: > 0, Sequence: { } sequence, At: { } at, Epoch: { } epoch, Monotonic: { } monotonic })
        {
            return (null, DamageKind.NotARecord);
        }

        return EventCodecs.Read(envelope.Type, fields) is { } fact ? (new(sequence, at, epoch, new Moment(monotonic), fact), default) : (null, DamageKind.UnknownType);
    }
}
