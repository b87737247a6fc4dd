using System.Buffers;
using System.Buffers.Text;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>Goes along a line as long as it is exactly as the writer writes it, a fixed text and what follows it at a time.</summary>
/// <param name="line">The whole line.</param>
internal ref struct LineCursor(ReadOnlySpan<byte> line)
{
    private static readonly SearchValues<byte> OfNames = SearchValues.Create("abcdefghijklmnopqrstuvwxyz-"u8);

    private ReadOnlySpan<byte> rest = line;

    /// <summary>How many bytes are not yet passed.</summary>
    internal readonly int Left => rest.Length;

    /// <summary>A whole number above 0 in its shortest form, and a comma, which is not passed.</summary>
    internal bool PassesNumber(scoped ReadOnlySpan<byte> before, out long number)
    {
        number = 0;
        return Passes(before) && rest is [> (byte)'0' and <= (byte)'9', ..] && Utf8Parser.TryParse(rest, out number, out int digits) && Passes(digits) && rest is [(byte)',', ..];
    }

    /// <summary>Small letters and hyphens.</summary>
    internal bool PassesName(scoped ReadOnlySpan<byte> before, out ReadOnlySpan<byte> name)
    {
        int length = Passes(before) ? Math.Max(0, rest.IndexOfAnyExcept(OfNames)) : 0;
        name = rest[..length];
        return length > 0 && Passes(length);
    }

    /// <summary>So many bytes.</summary>
    internal bool PassesBytes(scoped ReadOnlySpan<byte> before, int length, out ReadOnlySpan<byte> bytes)
    {
        int taken = Passes(before) && rest.Length >= length ? length : 0;
        bytes = rest[..taken];
        return taken > 0 && Passes(taken);
    }

    private bool Passes(scoped ReadOnlySpan<byte> text) => rest.StartsWith(text) && Passes(text.Length);

    private bool Passes(int length)
    {
        rest = rest[length..];
        return true;
    }
}
