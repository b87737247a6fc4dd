using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;

namespace WarmupConsole.Midi.Playing;

/// <summary>The engine's port: it may be lost while playing and come back, and says so once each time.</summary>
internal sealed class PianoPort(Func<PortChoice, PortOpening> openPort)
{
    private IMidiPort _port = new NullPort();
    private volatile PortWatch? _watched;
    private bool _failed;
    private bool _isLost;

    /// <summary>What the watcher looks for; may be read by any thread.</summary>
    internal PortWatch? Watched => _watched;

    /// <param name="choice">What is wanted.</param>
    /// <param name="trouble">What could not be finished with the port before.</param>
    internal Frame Open(PortChoice choice, string? trouble)
    {
        PortOpening opening = openPort(choice);
        _port = opening.Port;
        Use(opening);
        string sentence = trouble is null ? opening.Sentence : $"{trouble} {opening.Sentence}";
        return TakeLoss() ?? (opening.AsWanted && trouble is null ? new Frame.PortOpened(sentence) : new Frame.PortFailed(sentence));
    }

    internal void Send(MidiMessage message)
    {
        Span<byte> bytes = stackalloc byte[MidiMessage.LongestLength];
        _failed |= !_port.Send(bytes[..message.Encode(bytes)]) && !_isLost;
    }

    /// <summary>The report, when sending has failed since.</summary>
    internal Frame? TakeLoss() => _failed ? Lose() : null;

    /// <summary>Acts on what the watcher saw, unless something else is watched by now.</summary>
    internal Frame? Take(PortSight sight) => !ReferenceEquals(sight.Of, _watched) ? null
        : sight.Of.Device is not null ? Lose()
        : Return();

    internal string? Close()
    {
        IMidiPort port = _port;
        (_port, _watched) = (new NullPort(), null);
        return port.Close();
    }

    private Frame.PortLost Lose()
    {
        (_failed, _isLost) = (false, true);
        _port.Lose();
        _watched = _watched?.AfterLoss();
        return new(_port.LostSentence);
    }

    // Failing to return is not told: the watcher comes again.
    private Frame? Return()
    {
        bool wasLost = _isLost;
        if (_port.Return() is not { } opening)
        {
            return null;
        }

        Use(opening);
        foreach (MidiMessage message in Panic.Messages)
        {
            Send(message);
        }

        return TakeLoss() ?? new Frame.PortOpened(wasLost ? opening.Port.BackSentence : opening.Sentence);
    }

    // A device that was away may have forgotten everything. The first message also makes the way to it ready, before a note depends on it.
    private void Use(PortOpening opening)
    {
        (_failed, _isLost) = (false, false);
        _watched = opening.Watch;
        Send(MidiMessage.Program(MidiConstants.PianoChannel, MidiConstants.GrandPiano));
    }
}
