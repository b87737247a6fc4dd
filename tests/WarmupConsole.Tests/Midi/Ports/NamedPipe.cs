using System.Runtime.InteropServices;
using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Tests.Midi.Ports;

/// <summary>A pipe with a name in a folder of its own: to a raw port it looks like a device file, with a test behind it.</summary>
internal sealed partial class NamedPipe : IDisposable
{
    private const int OwnerOnly = 0x180;
    private const int NonBlocking = 0x800;
    private const int PatienceMilliseconds = 30_000;
    private readonly string _folder = Directory.CreateTempSubdirectory("warmup-pipe").FullName;
    private int _reader;

    internal NamedPipe()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "Raw device files exist on Linux only.");
        Path = System.IO.Path.Combine(_folder, "midiC7D0");
        PlugIn();
    }

    internal string Path { get; }

    internal PortChoice Choice => PortChoice.Named(Path);

    /// <summary>The device file appears, with something behind it.</summary>
    internal void PlugIn()
    {
        Assert.Equal(0, mkfifo(Path, OwnerOnly));
        Connect();
    }

    /// <summary>The device file vanishes.</summary>
    internal void Unplug()
    {
        Disconnect();
        File.Delete(Path);
    }

    /// <summary>Something that reads is behind the device: it is switched on.</summary>
    internal void Connect() => _reader = open(Path, NonBlocking);

    /// <summary>Nothing reads any more: it is switched off.</summary>
    internal void Disconnect()
    {
        _ = close(_reader);
        _reader = -1;
    }

    /// <summary>What has arrived.</summary>
    internal byte[] Read()
    {
        byte[] buffer = new byte[1 << 17];
        nint count = read(_reader, buffer, buffer.Length);
        return buffer[..(int)Math.Max(count, 0)];
    }

    /// <summary>The next bytes, in hexadecimal, waiting for them within bounds.</summary>
    internal string WaitFor(int bytes)
    {
        List<byte> arrived = [];
        while (arrived.Count < bytes)
        {
            PollEntry entry = new() { Descriptor = _reader, Wanted = 1 };
            Assert.True(poll(ref entry, 1, PatienceMilliseconds) > 0, $"Only {Convert.ToHexString([.. arrived])} arrived.");
            byte[] one = new byte[1];
            Assert.True(read(_reader, one, 1) == 1, $"After {Convert.ToHexString([.. arrived])} nobody writes any more.");
            arrived.Add(one[0]);
        }

        return Convert.ToHexString([.. arrived]);
    }

    public void Dispose()
    {
        _ = close(_reader);
        Directory.Delete(_folder, recursive: true);
    }

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int mkfifo(string path, int mode);

    [LibraryImport("libc", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int open(string path, int flags);

    [LibraryImport("libc")]
    private static partial int poll(ref PollEntry entries, nuint count, int milliseconds);

    [LibraryImport("libc")]
    private static partial nint read(int descriptor, [Out] byte[] bytes, nint count);

    [LibraryImport("libc")]
    private static partial int close(int descriptor);

    /// <summary>struct pollfd.</summary>
    private struct PollEntry
    {
        internal int Descriptor;
        internal short Wanted;
        internal short Seen;
    }
}
