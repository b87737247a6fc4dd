namespace WarmupConsole.Midi.Ports;

/// <summary>Where MIDI bytes go. Used by one thread.</summary>
public interface IMidiPort
{
    /// <summary>The name for the director.</summary>
    string Name { get; }

    /// <summary>What the director is told when it is lost.</summary>
    string LostSentence => PortTexts.Lost(Name);

    /// <summary>What the director is told when it is there again.</summary>
    string BackSentence => PortTexts.Back(Name);

    /// <summary>Sends one whole message with its status byte. False when the port is lost; later calls are then useless but harmless.</summary>
    bool Send(ReadOnlySpan<byte> message);

    /// <summary>Sends what is still under way and lets go of the device. May be called again, to no effect.</summary>
    /// <returns>Null, or a sentence about what could not be finished.</returns>
    string? Close();

    /// <summary>Lets go of a device that is gone. What else the port serves, such as a recording, goes on.</summary>
    void Lose() => Close();

    /// <summary>Tries to reach the device again after <see cref="Lose"/>.</summary>
    /// <returns>Null when it is not there, or for a port that never comes back.</returns>
    PortOpening? Return() => null;
}
