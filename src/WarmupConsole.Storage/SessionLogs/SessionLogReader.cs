using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>Reads a session log: whole records, and a report of everything else. It throws on no bytes.</summary>
public static class SessionLogReader
{
    public static SessionLog Read(ReadOnlySpan<byte> bytes)
    {
        SequenceCheck order = new();
        int start = 0;
        while (start < bytes.Length)
        {
            int length = bytes[start..].IndexOf(LogFormat.Newline);
            bool isEnded = length >= 0;
            ReadOnlySpan<byte> line = isEnded ? bytes.Slice(start, length) : bytes[start..];
            Judge(line, start, isEnded, order);
            start += line.Length + 1;
        }

        return new(order.Records, order.Damages) { FirstChecksum = order.FirstChecksum };
    }

    private static void Judge(ReadOnlySpan<byte> line, long offset, bool isEnded, SequenceCheck order)
    {
        // Folder synchronisation may have turned newlines into carriage return and newline.
        ReadOnlySpan<byte> text = line.TrimEnd((byte)'\r');
        if (text.IsEmpty)
        {
            return;
        }

        (SessionRecord? record, DamageKind fault) = RecordReader.Read(text);
        if (record is not null)
        {
            order.Add(record, text, offset);
        }
        else
        {
            order.AddDamage(offset, line.Length, isEnded ? fault : DamageKind.TornTail);
        }
    }
}
