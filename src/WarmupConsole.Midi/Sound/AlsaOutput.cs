using System.Runtime.InteropServices;
using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Midi.Sound;

/// <summary>The system's loudspeaker on Linux, through its own audio library (libasound), on the device that the system calls default.</summary>
public sealed unsafe partial class AlsaOutput : IAudioOutput
{
    private const string Library = "libasound.so.2";
    private const string Device = "default";
    private const int Playback = 0;
    private const int Signed16 = 2;
    private const int Interleaved = 3;
    private const uint OneChannel = 1;
    private const int MayResample = 1;
    private const int Silently = 1;
    private void* _device;

    private AlsaOutput(void* device) => _device = device;

    /// <summary>Null when the library or a card is not there, or another program holds the card.</summary>
    public static AlsaOutput? TryOpen()
    {
        if (!OperatingSystem.IsLinux() || !NativeLibrary.TryLoad(Library, out nint library))
        {
            return null;
        }

        using QuietStandardError quiet = new();
        void* device;
        if (snd_pcm_open(&device, Device, Playback, 0) < 0)
        {
            return null;
        }

        var setUp = (delegate* unmanaged[Cdecl]<void*, int, int, uint, uint, int, uint, int>)NativeLibrary.GetExport(library, "snd_pcm_set_params");
        if (setUp(device, Signed16, Interleaved, OneChannel, SoundPort.SampleRate, MayResample, SoundPort.LatencyMicroseconds) >= 0)
        {
            return new(device);
        }

        _ = snd_pcm_close(device);
        return null;
    }

    public bool Write(ReadOnlySpan<short> samples)
    {
        fixed (short* first = samples)
        {
            for (int done = 0; done < samples.Length && _device is not null;)
            {
                nint written = snd_pcm_writei(_device, first + done, (nuint)(samples.Length - done));
                if (written < 0 && snd_pcm_recover(_device, (int)written, Silently) < 0)
                {
                    return false;
                }

                done += (int)Math.Max(0, written);
            }
        }

        return _device is not null;
    }

    public void Close()
    {
        if (_device is not null)
        {
            _ = snd_pcm_drain(_device);
            _ = snd_pcm_close(_device);
            _device = null;
        }
    }

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    private static partial int snd_pcm_open(void** device, string name, int stream, int mode);

    [LibraryImport(Library)]
    private static partial nint snd_pcm_writei(void* device, short* samples, nuint frames);

    [LibraryImport(Library)]
    private static partial int snd_pcm_recover(void* device, int error, int silent);

    [LibraryImport(Library)]
    private static partial int snd_pcm_drain(void* device);

    [LibraryImport(Library)]
    private static partial int snd_pcm_close(void* device);
}
