using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Midi.Listening;

/// <summary>One input of RtMidi on one of its APIs; the library keeps what arrives until it is taken.</summary>
internal sealed unsafe class RtMidiIn : IMidiInput
{
    private const string ClientName = "warmup listener";
    private const uint MostWaiting = 4096;

    private readonly int _api;
    private readonly int _deathsBefore = JackServer.Deaths;
    private RtMidiNative.Device* _device;
    private string _fullName = "";

    private RtMidiIn(RtMidiNative.Device* device, int api)
    {
        _device = device;
        _api = api;
    }

    public string Name { get; private set; } = "";

    // A server of JACK answers only while it lives, so it is not asked; elsewhere a name with other numbers is another device.
    public bool IsThere => !IsDead && (_api == JackServer.Api || Names().Contains(_fullName));

    // A client of a JACK server that has died must not be touched, not even to close it.
    private bool IsDead => _device is null || (_api == JackServer.Api && JackServer.Deaths != _deathsBefore);

    /// <summary>Null when the API does not work here.</summary>
    internal static RtMidiIn? Create(int api)
    {
        RtMidiNative.Device* device = RtMidiNative.rtmidi_in_create(api, ClientName, MostWaiting);
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
            RtMidiNative.rtmidi_in_free(device);
        }

        return null;
    }

    internal List<string> Names() => RtMidiNative.PortNames(_device);

    internal bool Open(int port, string name)
    {
        (Name, _fullName) = (name, Names()[port]);
        _device->Ok = 1;
        RtMidiNative.rtmidi_open_port(_device, (uint)port, "listener");
        return _device->Ok != 0;
    }

    /// <summary>One message at a time; one that is larger than the space for it (system exclusive) is passed over.</summary>
    public int Take(Span<byte> bytes)
    {
        while (!IsDead)
        {
            nuint size = (nuint)bytes.Length;
            fixed (byte* target = bytes)
            {
                _ = RtMidiNative.rtmidi_in_get_message(_device, target, &size);
            }

            if (size <= (nuint)bytes.Length)
            {
                return (int)size;
            }
        }

        return 0;
    }

    public void Close()
    {
        if (!IsDead)
        {
            RtMidiNative.rtmidi_close_port(_device);
            RtMidiNative.rtmidi_in_free(_device);
        }

        _device = null;
    }
}
