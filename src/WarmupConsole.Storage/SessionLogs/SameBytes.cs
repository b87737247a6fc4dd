namespace WarmupConsole.Storage.SessionLogs;

/// <summary>
/// Remembers what was last made of some bytes: most values of a log are those of thousands of lines before it (the parts, a name, a span of notes). Small and
/// forgetful: a value whose place another one takes is made anew. From any thread.
/// </summary>
/// <param name="make">What is made; it must not be changed by anybody.</param>
internal sealed class SameBytes<T>(Func<ReadOnlySpan<byte>, T> make)
{
    private const int Places = 1024;
    private const int Longest = 200;

    private readonly Entry?[] entries = new Entry?[Places];

    internal T Of(ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > Longest)
        {
            return make(bytes);
        }

        ref Entry? place = ref entries[Hash(bytes) % Places];
        if (place is { } known && bytes.SequenceEqual(known.Bytes))
        {
            return known.Value;
        }

        T value = make(bytes);
        place = new(bytes.ToArray(), value);
        return value;
    }

    /// <summary>FNV-1a (Fowler, Noll and Vo), 32 bits.</summary>
    private static uint Hash(ReadOnlySpan<byte> bytes)
    {
        uint hash = 2_166_136_261;
        foreach (byte next in bytes)
        {
            hash = (hash ^ next) * 16_777_619;
        }

        return hash ^ (hash >> 16);
    }

    private sealed record Entry(byte[] Bytes, T Value);
}
