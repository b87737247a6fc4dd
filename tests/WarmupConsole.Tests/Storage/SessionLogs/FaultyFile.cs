using System.Runtime.InteropServices;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Tests.Storage.SessionLogs;

/// <summary>A file that drops what was not flushed, refuses writes, and tears them.</summary>
internal sealed class FaultyFile : ILogFile
{
    private readonly List<byte> held = [];
    private int durable;

    /// <summary>What a reader sees while the machine is up.</summary>
    internal byte[] Bytes => [.. held];

    /// <summary>What is left after a power cut.</summary>
    internal byte[] AfterPowerCut => [.. held.Take(durable)];

    internal bool RefusesWrites { get; set; }

    /// <summary>Bytes of a refused write that reach the file all the same.</summary>
    internal int TornBytes { get; set; }

    internal bool RefusesFlush { get; set; }

    internal int Flushes { get; private set; }

    /// <summary>How often a failed flush dropped bytes.</summary>
    internal int Drops { get; private set; }

    /// <summary>True for a disk that says it has flushed and has not.</summary>
    internal bool Lies { get; init; }

    /// <summary>Bytes that no power cut takes away.</summary>
    internal int Durable => durable;

    /// <summary>What a reader sees, without a copy; valid until the next write.</summary>
    internal ReadOnlySpan<byte> Held => CollectionsMarshal.AsSpan(held);

    public void Append(ReadOnlySpan<byte> bytes)
    {
        if (RefusesWrites)
        {
            held.AddRange(bytes[..Math.Min(TornBytes, bytes.Length)]);
            throw new IOException("No space left on device");
        }

        held.AddRange(bytes);
    }

    public void FlushToDisk()
    {
        if (RefusesFlush)
        {
            // As systems do: what could not be flushed is dropped.
            held.RemoveRange(durable, held.Count - durable);
            Drops++;
            throw new IOException("Input/output error");
        }

        Flushes++;
        durable = Lies ? durable : held.Count;
    }

    /// <summary>The machine starts again with this much of the file, and works.</summary>
    internal void Restart(int kept)
    {
        held.RemoveRange(kept, held.Count - kept);
        (durable, RefusesWrites, RefusesFlush) = (kept, false, false);
    }

    public void Dispose()
    {
    }
}
