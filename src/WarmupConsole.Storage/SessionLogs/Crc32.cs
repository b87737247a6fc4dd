using System.Buffers.Binary;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>CRC-32/ISO-HDLC: polynomial EDB88320 reflected, start and final inversion; check value of "123456789" is CBF43926.</summary>
public static class Crc32
{
    private const int Step = 8;

    /// <summary>The table for a byte, and after it those for a byte followed by one to seven others: eight bytes are taken at a time.</summary>
    private static readonly uint[][] Tables = MakeTables();

    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        uint crc = uint.MaxValue;
        while (bytes.Length >= Step)
        {
            uint low = BinaryPrimitives.ReadUInt32LittleEndian(bytes) ^ crc;
            crc = Tables[7][(byte)low] ^ Tables[6][(byte)(low >> 8)] ^ Tables[5][(byte)(low >> 16)] ^ Tables[4][low >> 24]
                ^ Tables[3][bytes[4]] ^ Tables[2][bytes[5]] ^ Tables[1][bytes[6]] ^ Tables[0][bytes[7]];
            bytes = bytes[Step..];
        }

        foreach (byte next in bytes)
        {
            crc = Tables[0][(byte)(crc ^ next)] ^ (crc >> 8);
        }

        return ~crc;
    }

    private static uint[][] MakeTables()
    {
        uint[][] tables = [[.. Enumerable.Range(0, 256).Select(index => Entry((uint)index))], .. Enumerable.Range(1, Step - 1).Select(_ => new uint[256])];
        foreach ((uint[] before, uint[] after) in tables.Zip(tables.Skip(1)))
        {
            for (int index = 0; index < after.Length; index++)
            {
                after[index] = tables[0][(byte)before[index]] ^ (before[index] >> 8);
            }
        }

        return tables;
    }

    private static uint Entry(uint value)
    {
        for (int bit = 0; bit < 8; bit++)
        {
            value = (value & 1) == 0 ? value >> 1 : (value >> 1) ^ 0xEDB88320;
        }

        return value;
    }
}
