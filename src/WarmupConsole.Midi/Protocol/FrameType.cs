namespace WarmupConsole.Midi.Protocol;

/// <summary>The type byte of a frame.</summary>
internal enum FrameType : byte
{
    Hello = 0x01,
    OpenPort = 0x02,
    Timeline = 0x03,
    Notes = 0x04,
    Silence = 0x05,
    Quit = 0x06,
    Ready = 0x41,
    PortOpened = 0x42,
    PortFailed = 0x43,
    PortLost = 0x44,
    Silenced = 0x45,
    Refused = 0x46,
    Onsets = 0x47,
    Heard = 0x48,
    InputOpened = 0x49,
    InputLost = 0x4A,
}
