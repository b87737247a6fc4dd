using System.Buffers;
using System.Globalization;
using System.IO.Hashing;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>Writes one record as its line, without the newline.</summary>
internal static class RecordText
{
    // Letters of all languages stay readable; control characters are escaped all the same.
    private static readonly JsonWriterOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    internal static byte[] Write(SessionRecord record)
    {
        ArrayBufferWriter<byte> line = new();
        using (Utf8JsonWriter json = new(line, Readable))
        {
            json.WriteStartObject();
            WriteEnvelope(json, record);
            foreach (JsonProperty field in EventCodecs.FieldsOf(record.Event).EnumerateObject())
            {
                field.WriteTo(json);
            }

            json.WriteEndObject();
        }

        return WithChecksum(line.WrittenSpan[..^1]);
    }

    private static void WriteEnvelope(Utf8JsonWriter json, SessionRecord record)
    {
        json.WriteNumber("format", LogFormat.Version);
        json.WriteNumber("seq", record.Sequence);
        json.WriteString("type", EventCodecs.NameOf(record.Event));
        json.WriteString("at", record.At.ToString(LogFormat.TimePattern, CultureInfo.InvariantCulture));
        json.WriteNumber("epoch", record.Epoch);
        json.WriteNumber("mono", record.Monotonic.Nanoseconds);
    }

    private static byte[] WithChecksum(ReadOnlySpan<byte> body) =>
        [.. body, .. LogFormat.TailStart, .. Encoding.ASCII.GetBytes(Crc32.HashToUInt32(body).ToString("x8", CultureInfo.InvariantCulture)), .. LogFormat.TailEnd];
}
