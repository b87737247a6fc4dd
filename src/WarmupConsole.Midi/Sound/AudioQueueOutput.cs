using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Versioning;

namespace WarmupConsole.Midi.Sound;

/// <summary>The loudspeaker of macOS, through its own AudioToolbox. Compiled everywhere, so far run nowhere: no such machine was at hand.</summary>
[SupportedOSPlatform("macos")]
internal sealed unsafe partial class AudioQueueOutput : IAudioOutput, IDisposable
{
    private const string Library = "/System/Library/Frameworks/AudioToolbox.framework/AudioToolbox";
    private const uint LinearPcm = 0x6C70636D; // 'lpcm'
    private const uint SignedPacked = 0x4 | 0x8;
    private const int Buffers = 8;
    private const int PatienceMilliseconds = 1000;

    private readonly BlockingCollection<nint> _free = [];
    private GCHandle _self;
    private nint _queue;

    private AudioQueueOutput()
    {
    }

    internal static AudioQueueOutput? TryOpen()
    {
        AudioQueueOutput output = new();
        output._self = GCHandle.Alloc(output);
        Format format = new() { Rate = SoundPort.SampleRate, Id = LinearPcm, Flags = SignedPacked, BytesPerPacket = 2, FramesPerPacket = 1, BytesPerFrame = 2, Channels = 1, Bits = 16 };
        nint queue;
        var create = (delegate* unmanaged[Cdecl]<Format*, delegate* unmanaged[Cdecl]<nint, nint, Buffer*, void>, nint, nint, nint, uint, nint*, int>)NativeLibrary.GetExport(NativeLibrary.Load(Library), "AudioQueueNewOutput");
        if (create(&format, &OnPlayed, GCHandle.ToIntPtr(output._self), 0, 0, 0, &queue) != 0)
        {
            output._self.Free();
            return null;
        }

        output._queue = queue;
        for (int i = 0; i < Buffers; i++)
        {
            Buffer* buffer;
            if (AudioQueueAllocateBuffer(queue, 2 * SoundPort.BlockSamples, &buffer) == 0)
            {
                output._free.Add((nint)buffer);
            }
        }

        _ = AudioQueueStart(queue, null);
        return output;
    }

    public void Dispose() => Close();

    public bool Write(ReadOnlySpan<short> samples)
    {
        if (!_free.TryTake(out nint pointer, PatienceMilliseconds))
        {
            return false;
        }

        Buffer* buffer = (Buffer*)pointer;
        samples.CopyTo(new(buffer->Data, SoundPort.BlockSamples));
        buffer->Bytes = (uint)(2 * samples.Length);
        return AudioQueueEnqueueBuffer(_queue, buffer, 0, null) == 0;
    }

    public void Close()
    {
        if (_queue != 0)
        {
            _ = AudioQueueDispose(_queue, 1);
            _queue = 0;
            _self.Free();
            _free.Dispose();
        }
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(CallConvCdecl)])]
    private static void OnPlayed(nint user, nint queue, Buffer* buffer) => ((AudioQueueOutput)GCHandle.FromIntPtr(user).Target!)._free.Add((nint)buffer);

    [LibraryImport(Library)]
    private static partial int AudioQueueAllocateBuffer(nint queue, uint bytes, Buffer** buffer);

    [LibraryImport(Library)]
    private static partial int AudioQueueEnqueueBuffer(nint queue, Buffer* buffer, uint packets, void* descriptions);

    [LibraryImport(Library)]
    private static partial int AudioQueueStart(nint queue, void* at);

    [LibraryImport(Library)]
    private static partial int AudioQueueDispose(nint queue, byte atOnce);

    [StructLayout(LayoutKind.Sequential)]
    private struct Format
    {
        public double Rate;
        public uint Id;
        public uint Flags;
        public uint BytesPerPacket;
        public uint FramesPerPacket;
        public uint BytesPerFrame;
        public uint Channels;
        public uint Bits;
        public uint Reserved;
    }

    [StructLayout(LayoutKind.Sequential)]
    private struct Buffer
    {
        public uint Capacity;
        public void* Data;
        public uint Bytes;
        public void* User;
    }
}
