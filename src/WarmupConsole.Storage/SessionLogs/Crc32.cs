namespace WarmupConsole.Storage.SessionLogs;

/// <summary>CRC-32/ISO-HDLC: polynomial EDB88320 reflected, start and final inversion; check value of "123456789" is CBF43926.</summary>
public static class Crc32
{
    private static readonly uint[] Table = [.. Enumerable.Range(0, 256).Select(index => Entry((uint)index))];

    public static uint Of(ReadOnlySpan<byte> bytes)
    {
        uint crc = uint.MaxValue;
        foreach (byte next in bytes)
        {
            crc = Table[(byte)(crc ^ next)] ^ (crc >> 8);
        }

        return ~crc;
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
