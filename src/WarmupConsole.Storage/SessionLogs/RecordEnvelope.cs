using System.Text.Json;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>The fields that every record has; null where one is missing or of the wrong type. Of a field that stands twice the last counts.</summary>
internal readonly record struct RecordEnvelope(int? Format, string? Type, long? Sequence, DateTimeOffset? At, int? Epoch, long? Monotonic)
{
    private const int TimeLength = 29;
    private const int OffsetSignAt = 23;

    /// <exception cref="JsonException">The line is no JSON object, or something stands behind it.</exception>
    internal static RecordEnvelope Read(ReadOnlySpan<byte> line)
    {
        Utf8JsonReader reader = new(line);
        RecordEnvelope envelope = default;
        if (!reader.Read() || reader.TokenType != JsonTokenType.StartObject)
        {
            throw new JsonException();
        }

        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            envelope = envelope.With(ref reader);
        }

        return reader.BytesConsumed == line.Length ? envelope : throw new JsonException();
    }

    private RecordEnvelope With(ref Utf8JsonReader reader)
    {
        // Names are compared as bytes: most fields are not of the envelope, and no text is made of them.
        RecordEnvelope next = this;
        if (Is(ref reader, "format"u8))
        {
            next = this with { Format = Whole(ref reader) };
        }
        else if (Is(ref reader, "seq"u8))
        {
            next = this with { Sequence = Long(ref reader) };
        }
        else if (Is(ref reader, "type"u8))
        {
            next = this with { Type = reader.TokenType == JsonTokenType.String ? reader.GetString() : null };
        }
        else if (Is(ref reader, "at"u8))
        {
            next = this with { At = Time(ref reader) };
        }
        else if (Is(ref reader, "epoch"u8))
        {
            next = this with { Epoch = Whole(ref reader) };
        }
        else if (Is(ref reader, "mono"u8))
        {
            next = this with { Monotonic = Long(ref reader) };
        }
        else
        {
            reader.Read();
        }

        reader.Skip();
        return next;
    }

    /// <summary>On the right name the reader moves to its value.</summary>
    private static bool Is(ref Utf8JsonReader reader, ReadOnlySpan<byte> name) => reader.ValueTextEquals(name) && reader.Read();

    private static int? Whole(ref Utf8JsonReader reader) => reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out int value) ? value : null;

    private static long? Long(ref Utf8JsonReader reader) => reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out long value) ? value : null;

    /// <summary>With milliseconds and the offset in hours and minutes, as <see cref="LogFormat.TimePattern"/> says, and in no other form.</summary>
    private static DateTimeOffset? Time(ref Utf8JsonReader reader) => reader.TokenType == JsonTokenType.String
        && reader.ValueSpan.Length == TimeLength && reader.ValueSpan[OffsetSignAt] is (byte)'+' or (byte)'-'
        && reader.TryGetDateTimeOffset(out DateTimeOffset at) ? at : null;
}
