using System.Buffers.Text;
using System.Globalization;
using System.Text.Json;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>Judges one line by itself: a record, or why not.</summary>
internal static class RecordReader
{
    internal static (SessionRecord? Record, DamageKind Fault) Read(ReadOnlySpan<byte> line)
    {
        if (!EndsInChecksum(line, out uint stated))
        {
            return (null, DamageKind.CutOff);
        }

        return Crc32.Of(line[..^LogFormat.TailLength]) == stated ? Parse(line) : (null, DamageKind.BadChecksum);
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
            Utf8JsonReader reader = new(line);
            using JsonDocument document = JsonDocument.ParseValue(ref reader);
            return reader.BytesConsumed == line.Length ? Parse(document.RootElement) : (null, DamageKind.NotARecord);
        }
        catch (Exception fault) when (fault is JsonException or InvalidOperationException or FormatException or KeyNotFoundException)
        {
            return (null, DamageKind.NotARecord);
        }
    }

    private static (SessionRecord? Record, DamageKind Fault) Parse(JsonElement line)
    {
        if (line.GetProperty("format").GetInt32() is var format && format != LogFormat.Version)
        {
            return (null, format > LogFormat.Version ? DamageKind.NewerFormat : DamageKind.NotARecord);
        }

        SessionEvent? fact = EventCodecs.Read(line.GetProperty("type").GetString() ?? "", line);
        return fact is null ? (null, DamageKind.UnknownType) : (Envelope(line, fact), default);
    }

    private static SessionRecord Envelope(JsonElement line, SessionEvent fact) => new(
        line.GetProperty("seq").GetInt64(),
        DateTimeOffset.ParseExact(line.GetProperty("at").GetString() ?? "", LogFormat.TimePattern, CultureInfo.InvariantCulture),
        line.GetProperty("epoch").GetInt32(),
        new Moment(line.GetProperty("mono").GetInt64()),
        fact);
}
