namespace WarmupConsole.Midi.Ports;

/// <summary>One output handle of RtMidi on one of its APIs. Errors are read from the flag only, which the library never resets.</summary>
internal sealed unsafe class RtMidiOut
{
    private const string ClientName = "warmup";
    private const int MostApis = 16;

    private RtMidiNative.Device* _device;

    private readonly int _api;
    private readonly int _deathsBefore = JackServer.Deaths;

    private RtMidiOut(RtMidiNative.Device* device, int api)
    {
        _device = device;
        _api = api;
    }

    // Sending to a dead server blocks in the end, and closing a client of it ends the process.
    private bool IsDead => _device is null || (_api == JackServer.Api && JackServer.Deaths != _deathsBefore);

    /// <summary>The APIs that the library was built with (ALSA, JACK, CoreMIDI, WinMM ...), in its order.</summary>
    internal static int[] Apis()
    {
        int* apis = stackalloc int[MostApis];
        int count = Math.Clamp(RtMidiNative.rtmidi_get_compiled_api(apis, MostApis), 0, MostApis);
        return new ReadOnlySpan<int>(apis, count).ToArray();
    }

    /// <summary>Null when the API does not work here, such as JACK without its server.</summary>
    internal static RtMidiOut? Create(int api)
    {
        RtMidiNative.Device* device = RtMidiNative.rtmidi_out_create(api, ClientName);
        if (device is null)
        {
            return null;
        }

        if (device->Pointer is not null && device->Ok != 0)
        {
            return new(device, api);
        }

        if (device->Pointer is not null)
        {
            RtMidiNative.rtmidi_out_free(device);
        }

        return null;
    }

    internal List<string> Names() => RtMidiNative.PortNames(_device);

    internal bool Open(int port)
    {
        _device->Ok = 1;
        RtMidiNative.rtmidi_open_port(_device, (uint)port, "piano");
        return _device->Ok != 0;
    }

    internal bool Send(ReadOnlySpan<byte> message)
    {
        if (IsDead)
        {
            return false;
        }

        _device->Ok = 1;
        fixed (byte* bytes = message)
        {
            return RtMidiNative.rtmidi_out_send_message(_device, bytes, message.Length) >= 0 && _device->Ok != 0;
        }
    }

    /// <summary>Closes before freeing: over JACK only closing sends what still waits.</summary>
    internal void Close()
    {
        if (!IsDead)
        {
            RtMidiNative.rtmidi_close_port(_device);
            RtMidiNative.rtmidi_out_free(_device);
        }

        _device = null;
    }
}
