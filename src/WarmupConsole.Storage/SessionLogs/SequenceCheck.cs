using System.Buffers.Binary;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>Gathers what is read and watches that the numbers count up without gaps.</summary>
internal sealed class SequenceCheck
{
    /// <summary>Most logs have about so many or fewer.</summary>
    private const int UsualRecords = 512;

    private readonly List<SessionRecord> records = new(UsualRecords);
    private readonly List<LogDamage> damages = [];

    /// <summary>The checksum that each record's line ends in, by rising numbers: the same record may stand twice, another under its number may not.</summary>
    private readonly List<(long Sequence, ulong Checksum)> kept = new(UsualRecords);

    private long expected = 1;
    private long damagedSince;

    internal IReadOnlyList<SessionRecord> Records => records;

    internal IReadOnlyList<LogDamage> Damages => damages;

    internal ulong FirstChecksum => kept.Count == 0 ? 0 : kept[0].Checksum;

    internal void Add(SessionRecord record, ReadOnlySpan<byte> line, long offset)
    {
        ulong checksum = BinaryPrimitives.ReadUInt64LittleEndian(line[(line.Length - LogFormat.TailLength + LogFormat.TailStart.Length)..]);
        if (record.Sequence < expected)
        {
            Repeated(record.Sequence, checksum, offset, line.Length);
            return;
        }

        long missing = record.Sequence - expected;
        if (missing > damagedSince)
        {
            damages.Add(new(offset, 0, DamageKind.SequenceGap, LogTexts.Gap(expected, record.Sequence - 1)));
        }

        records.Add(record);
        kept.Add((record.Sequence, checksum));
        (expected, damagedSince) = (record.Sequence + 1, 0);
    }

    internal void AddDamage(long offset, long length, DamageKind kind)
    {
        damages.Add(new(offset, length, kind, LogTexts.Damage(kind)));
        damagedSince++;
    }

    private void Repeated(long sequence, ulong checksum, long offset, long length)
    {
        int index = kept.BinarySearch((sequence, checksum));
        if (index < 0)
        {
            AddDamage(offset, length, DamageKind.SequenceRepeated);
        }
    }
}
