namespace WarmupConsole.Tests.Midi;

/// <summary>Bytes as they are written in documents: "90 3C 64".</summary>
internal static class Hex
{
    internal static byte[] Bytes(string hex) => Convert.FromHexString(string.Concat(hex.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));

    internal static string Of(ReadOnlySpan<byte> bytes) => string.Join(' ', bytes.ToArray().Select(b => b.ToString("X2", null)));

    /// <summary>A listing with a remark behind each # sign.</summary>
    internal static byte[] Annotated(string listing) =>
        Bytes(string.Join(' ', listing.Split('\n').Select(line => line.Split('#')[0])));
}
