using NAudio;
using NAudio.Midi;

namespace WarmupConsole.Midi.Ports;

/// <summary>A device of Windows' own MIDI interface, without RtMidi: what is left there when that library is not installed.</summary>
/// <param name="device">Open; closed with this port.</param>
/// <param name="name">For the director.</param>
public sealed class WinMmPort(IMidiOutput device, string name) : IMidiPort
{
    private bool _isClosed;

    public string Name => name;

    /// <summary>Three bytes at most: status, then data, from the lowest byte of a number upwards.</summary>
    public bool Send(ReadOnlySpan<byte> message)
    {
        int packed = 0;
        for (int i = message.Length - 1; i >= 0; i--)
        {
            packed = (packed << 8) | message[i];
        }

        return !_isClosed && TrySend(packed);
    }

    public string? Close()
    {
        if (!_isClosed)
        {
            _isClosed = true;
            device.Dispose();
        }

        return null;
    }

    private bool TrySend(int packed)
    {
        try
        {
            device.Send(packed);
            return true;
        }
        catch (Exception e) when (e is MmException or ObjectDisposedException)
        {
            return false;
        }
    }
}
