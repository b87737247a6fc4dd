using System.Runtime.InteropServices;
using System.Runtime.Versioning;

namespace WarmupConsole.Midi.Sound;

/// <summary>The loudspeaker of Windows, through its own WinMM. Compiled everywhere, so far run nowhere: no Windows machine was at hand.</summary>
[SupportedOSPlatform("windows")]
internal sealed unsafe partial class WaveOutput : IAudioOutput, IDisposable
{
    private const string Library = "winmm.dll";
    private const uint DefaultDevice = uint.MaxValue;
    private const uint EventCallback = 0x50000;
    private const uint Done = 1;
    private const int Buffers = 8;
    private const int PatienceMilliseconds = 1000;

    private readonly AutoResetEvent _played = new(false);
    private readonly Header* _headers = (Header*)NativeMemory.AllocZeroed(Buffers, (nuint)sizeof(Header));
    private readonly short* _samples = (short*)NativeMemory.AllocZeroed(Buffers * SoundPort.BlockSamples, sizeof(short));
    private nint _device;
    private int _next;

    private WaveOutput()
    {
    }

    internal static WaveOutput? TryOpen()
    {
        WaveOutput output = new();
        Format format = new() { Tag = 1, Channels = 1, Rate = SoundPort.SampleRate, BytesPerSecond = 2 * SoundPort.SampleRate, Align = 2, Bits = 16 };
        nint device;
        var open = (delegate* unmanaged[Stdcall]<nint*, uint, Format*, nint, nint, uint, uint>)NativeLibrary.GetExport(NativeLibrary.Load(Library), "waveOutOpen");
        if (open(&device, DefaultDevice, &format, output._played.SafeWaitHandle.DangerousGetHandle(), 0, EventCallback) == 0)
        {
            output._device = device;
            return output;
        }

        output.Free();
        return null;
    }

    public void Dispose() => Close();

    public bool Write(ReadOnlySpan<short> samples)
    {
        int at = _next++ % Buffers;
        Header* header = _headers + at;
        while (header->Data is not null && (header->Flags & Done) == 0)
        {
            if (!_played.WaitOne(PatienceMilliseconds))
            {
                return false;
            }
        }

        _ = header->Data is null ? 0 : waveOutUnprepareHeader(_device, header, (uint)sizeof(Header));
        short* room = _samples + (at * SoundPort.BlockSamples);
        samples.CopyTo(new(room, SoundPort.BlockSamples));
        *header = new() { Data = room, Bytes = (uint)(2 * samples.Length) };
        return waveOutPrepareHeader(_device, header, (uint)sizeof(Header)) == 0 && waveOutWrite(_device, header, (uint)sizeof(Header)) == 0;
    }

    public void Close()
    {
        if (_device != 0)
        {
            _ = waveOutReset(_device);
            _ = waveOutClose(_device);
            _device = 0;
            Free();
        }
    }

    private void Free()
    {
        NativeMemory.Free(_headers);
        NativeMemory.Free(_samples);
        _played.Dispose();
    }

    [LibraryImport(Library)]
    private static partial uint waveOutPrepareHeader(nint device, Header* header, uint size);

    [LibraryImport(Library)]
    private static partial uint waveOutUnprepareHeader(nint device, Header* header, uint size);

    [LibraryImport(Library)]
    private static partial uint waveOutWrite(nint device, Header* header, uint size);

    [LibraryImport(Library)]
    private static partial uint waveOutReset(nint device);

    [LibraryImport(Library)]
    private static partial uint waveOutClose(nint device);

    [StructLayout(LayoutKind.Sequential, Pack = 1)]
    private struct Format
    {
        public ushort Tag;
        public ushort Channels;
        public uint Rate;
        public uint BytesPerSecond;
        public ushort Align;
        public ushort Bits;
        public ushort Extra;
    }

    [StructLayout(LayoutKind.Sequential)]
    private struct Header
    {
        public short* Data;
        public uint Bytes;
        public uint Recorded;
        public nint User;
        public uint Flags;
        public uint Loops;
        public nint Next;
        public nint Reserved;
    }
}
