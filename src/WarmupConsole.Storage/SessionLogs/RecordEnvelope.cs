using System.Text.Json;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>The fields that every record has; null where one is missing or of the wrong type. Of a field that stands twice the last counts.</summary>
internal ref struct RecordEnvelope
{
    private const int TimeLength = 29;
    private const int OffsetSignAt = 23;

    private static readonly JsonReaderState BehindNumber = StateBehindNumber();

    internal int? Format { get; private set; }

    /// <summary>As it stands in the line; empty when it is missing.</summary>
    internal ReadOnlySpan<byte> Type { get; private set; }

    internal long? Sequence { get; private set; }

    internal DateTimeOffset? At { get; private set; }

    internal int? Epoch { get; private set; }

    internal long? Monotonic { get; private set; }

    /// <param name="line">The whole line.</param>
    /// <param name="others">Takes every other field.</param>
    /// <exception cref="JsonException">The line is no JSON object, or something stands behind it.</exception>
    internal static RecordEnvelope Read(ReadOnlySpan<byte> line, ref RecordFields others)
    {
        int start = AsWritten(line, out RecordEnvelope envelope, ref others);
        if (start == line.Length)
        {
            return envelope;
        }

        Utf8JsonReader reader = new(line[start..], isFinalBlock: true, start > 0 ? BehindNumber : default);
        if (start == 0 && (!reader.Read() || reader.TokenType != JsonTokenType.StartObject))
        {
            throw new JsonException();
        }

        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName)
        {
            if (!envelope.Take(ref reader))
            {
                others.Add(ref reader, start);
            }
        }

        return start + reader.BytesConsumed == line.Length ? envelope : throw new JsonException();
    }

    /// <summary>
    /// Nearly every line is as the writer writes it: what has to be equal is compared at once then, and tokens need not be found one by one. Any other line, as
    /// old or foreign ones may be, is left to the JSON reader, from the first field on that is written otherwise.
    /// </summary>
    /// <returns>Where the reader goes on: 0 when the line begins otherwise, and its length when nothing is left.</returns>
    private static int AsWritten(ReadOnlySpan<byte> line, out RecordEnvelope envelope, scoped ref RecordFields others)
    {
        LineCursor cursor = new(line);
        envelope = default;
        if (!(cursor.PassesNumber(LogFormat.Start, out long sequence)
            && cursor.PassesType(",\"type\":\""u8, out ReadOnlySpan<byte> type)
            && cursor.PassesBytes("\",\"at\":"u8, TimeLength + 2, out ReadOnlySpan<byte> quotedTime)
            && cursor.PassesNumber(",\"epoch\":"u8, out long epoch) && epoch is >= int.MinValue and <= int.MaxValue
            && cursor.PassesNumber(",\"mono\":"u8, out long monotonic)))
        {
            return 0;
        }

        Utf8JsonReader time = new(quotedTime);
        time.Read();
        envelope = new() { Format = LogFormat.Version, Sequence = sequence, Type = type, At = Time(ref time), Epoch = (int)epoch, Monotonic = monotonic };
        int at = cursor.At;
        while (cursor.PassesField(out RecordFields.Place field) && !IsOwn(line.Slice(field.Name, field.NameLength)))
        {
            others.Add(field);
            at = cursor.At;
        }

        return cursor.IsAtEnd && at == cursor.At ? line.Length : at;
    }

    private static bool IsOwn(ReadOnlySpan<byte> name) => name.SequenceEqual("format"u8) || name.SequenceEqual("seq"u8) || name.SequenceEqual("type"u8)
        || name.SequenceEqual("at"u8) || name.SequenceEqual("epoch"u8) || name.SequenceEqual("mono"u8);

    private static JsonReaderState StateBehindNumber()
    {
        Utf8JsonReader reader = new("{\"mono\":1,"u8, isFinalBlock: false, default);
        while (reader.Read())
        {
        }

        return reader.CurrentState;
    }

    /// <summary>True when the field is of the envelope; the reader then stands at its end.</summary>
    private bool Take(ref Utf8JsonReader reader)
    {
        // Names are compared as bytes: no text is made of them.
        if (Is(ref reader, "format"u8))
        {
            Format = Whole(ref reader);
        }
        else if (Is(ref reader, "seq"u8))
        {
            Sequence = Long(ref reader);
        }
        else if (Is(ref reader, "type"u8))
        {
            Type = reader.TokenType == JsonTokenType.String && !reader.ValueIsEscaped ? reader.ValueSpan : [];
        }
        else if (Is(ref reader, "at"u8))
        {
            At = Time(ref reader);
        }
        else if (Is(ref reader, "epoch"u8))
        {
            Epoch = Whole(ref reader);
        }
        else if (Is(ref reader, "mono"u8))
        {
            Monotonic = Long(ref reader);
        }
        else
        {
            return false;
        }

        reader.Skip();
        return true;
    }

    /// <summary>On the right name the reader moves to its value.</summary>
    private static bool Is(ref Utf8JsonReader reader, ReadOnlySpan<byte> name) =>
        (reader.ValueIsEscaped ? reader.ValueTextEquals(name) : reader.ValueSpan.SequenceEqual(name)) && reader.Read();

    private static int? Whole(ref Utf8JsonReader reader) => reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out int value) ? value : null;

    private static long? Long(ref Utf8JsonReader reader) => reader.TokenType == JsonTokenType.Number && reader.TryGetInt64(out long value) ? value : null;

    /// <summary>With milliseconds and the offset in hours and minutes, as <see cref="LogFormat.TimePattern"/> says, and in no other form.</summary>
    private static DateTimeOffset? Time(ref Utf8JsonReader reader) => reader.TokenType == JsonTokenType.String
        && reader.ValueSpan.Length == TimeLength && reader.ValueSpan[OffsetSignAt] is (byte)'+' or (byte)'-'
        && reader.TryGetDateTimeOffset(out DateTimeOffset at) ? at : null;
}
