using System.Buffers;
using System.Buffers.Text;
using System.Text.Json;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>
/// Goes along a line as long as it is exactly as the writer writes it: no space, no escape, nothing within a list but plain values. What it passes is sound
/// JSON; whatever else may be is left to the JSON reader. Where it does not pass, it stands anywhere.
/// </summary>
/// <param name="line">The whole line.</param>
internal ref struct LineCursor(ReadOnlySpan<byte> line)
{
    private static readonly SearchValues<byte> OfTypes = SearchValues.Create("abcdefghijklmnopqrstuvwxyz-"u8);
    private static readonly SearchValues<byte> OfNames = SearchValues.Create("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ"u8);

    /// <summary>What ends a plain text, and what may not stand in it as it is.</summary>
    private static readonly SearchValues<byte> InNoText = SearchValues.Create([(byte)'"', (byte)'\\', .. Enumerable.Range(0, 0x20).Select(control => (byte)control)]);

    private readonly int length = line.Length;
    private ReadOnlySpan<byte> rest = line;

    /// <summary>How many bytes are passed.</summary>
    internal readonly int At => length - rest.Length;

    /// <summary>True when only the end of the object is left.</summary>
    internal readonly bool IsAtEnd => rest is [(byte)'}'];

    /// <summary>A whole number, and a comma, which is not passed.</summary>
    internal bool PassesNumber(scoped ReadOnlySpan<byte> before, out long number)
    {
        number = 0;
        return Passes(before) && Kind == JsonTokenType.Number && Utf8Parser.TryParse(rest, out number, out _) && PassesWhole() && rest is [(byte)',', ..];
    }

    /// <summary>Small letters and hyphens.</summary>
    internal bool PassesType(scoped ReadOnlySpan<byte> before, out ReadOnlySpan<byte> type)
    {
        int letters = Passes(before) ? Math.Max(0, rest.IndexOfAnyExcept(OfTypes)) : 0;
        type = rest[..letters];
        return letters > 0 && Passes(letters);
    }

    /// <summary>So many bytes.</summary>
    internal bool PassesBytes(scoped ReadOnlySpan<byte> before, int count, out ReadOnlySpan<byte> bytes)
    {
        int taken = Passes(before) && rest.Length >= count ? count : 0;
        bytes = rest[..taken];
        return taken > 0 && Passes(taken);
    }

    /// <summary>A comma, a name and a value, with another field or the end behind it.</summary>
    internal bool PassesField(out RecordFields.Place place)
    {
        place = default;
        int letters = Passes(",\""u8) ? rest.IndexOfAnyExcept(OfNames) : 0;
        int name = At;
        if (letters <= 0 || !Passes(letters) || !Passes("\":"u8))
        {
            return false;
        }

        int start = At;
        JsonTokenType kind = Kind;
        bool isPassed = kind == JsonTokenType.StartArray ? PassesList() : PassesPlain(kind);
        place = new(name, letters, start, At - start, kind);
        return isPassed && rest is [(byte)',' or (byte)'}', ..];
    }

    private readonly JsonTokenType Kind => rest is not [var first, ..] ? JsonTokenType.None : first switch
    {
        (byte)'"' => JsonTokenType.String,
        (byte)'[' => JsonTokenType.StartArray,
        (byte)'t' => JsonTokenType.True,
        (byte)'f' => JsonTokenType.False,
        (byte)'n' => JsonTokenType.Null,
        (byte)'-' or (>= (byte)'0' and <= (byte)'9') => JsonTokenType.Number,
        _ => JsonTokenType.None,
    };

    private bool PassesList()
    {
        Passes(1);
        if (rest is [(byte)']', ..])
        {
            return Passes(1);
        }

        bool isPassed;
        do
        {
            isPassed = PassesPlain(Kind);
        }
        while (isPassed && Passes(","u8));
        return isPassed && Passes("]"u8);
    }

    private bool PassesPlain(JsonTokenType kind) => kind switch
    {
        JsonTokenType.String => rest[1..].IndexOfAny(InNoText) is >= 0 and var text && rest[text + 1] == '"' && Passes(text + 2),
        JsonTokenType.Number => PassesWhole(),
        JsonTokenType.True => Passes("true"u8),
        JsonTokenType.False => Passes("false"u8),
        JsonTokenType.Null => Passes("null"u8),
        _ => false,
    };

    /// <summary>A whole number in its shortest form.</summary>
    private bool PassesWhole()
    {
        int sign = rest[0] == '-' ? 1 : 0;
        int digits = rest[sign..].IndexOfAnyExceptInRange((byte)'0', (byte)'9');
        return digits > 0 && (digits == 1 || rest[sign] != '0') && Passes(sign + digits);
    }

    private bool Passes(scoped ReadOnlySpan<byte> text) => rest.StartsWith(text) && Passes(text.Length);

    private bool Passes(int count)
    {
        rest = rest[count..];
        return true;
    }
}
