using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Tests.Simulation;

/// <summary>A piano on a cable: it can be unplugged, switched off, and come back, and a port once lost stays dead.</summary>
internal sealed class SimulatedPiano(ScoreModel score, VirtualClock clock)
{
    private readonly HashSet<int> _sounding = [];
    private int _cable;

    /// <summary>The keys that sound; they go on sounding when the cable is pulled.</summary>
    internal IReadOnlySet<int> Sounding => _sounding;

    internal bool IsThere { get; private set; } = true;

    /// <summary>True for a faulty piano that misses every other note-off.</summary>
    internal bool MissesEnds { get; init; }

    internal PortOpening Open(PortChoice choice)
    {
        score.IsDeaf = !IsThere;
        return IsThere ? new(new Cable(this, _cable), true, "Playing on the piano.") : new(new NullPort(), false, $"Nothing sounds: no {choice.Kind} port.");
    }

    internal void Vanish(bool losesPower)
    {
        (IsThere, score.IsDeaf) = (false, true);
        _cable++;
        if (losesPower)
        {
            _sounding.Clear();
        }
    }

    internal void Return() => IsThere = true;

    public override string ToString() => $"piano sounds [{string.Join(' ', _sounding.Order())}]";

    private void Take(ReadOnlySpan<byte> message)
    {
        switch (message[0] & 0xF0)
        {
            case 0x90 when message[2] > 0:
                Law.Holds(_sounding.Add(message[1]) || MissesEnds, "A key was struck while it sounded", message[1]);
                score.Struck(message[1], clock.Now);
                break;
            case 0x80 or 0x90 when !(MissesEnds && message[1] % 2 == 0):
                _sounding.Remove(message[1]);
                break;
            case 0xB0 when message[1] is MidiConstants.AllSoundOff:
                _sounding.Clear();
                break;
        }
    }

    private sealed class Cable(SimulatedPiano piano, int number) : IMidiPort
    {
        public string Name => "piano";

        public bool Send(ReadOnlySpan<byte> message)
        {
            if (number != piano._cable)
            {
                return false;
            }

            piano.Take(message);
            return true;
        }

        public string? Close() => null;
    }
}
