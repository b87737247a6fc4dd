namespace WarmupConsole.Midi.Listening;

/// <summary>Where MIDI bytes come from. Used by one thread at a time.</summary>
public interface IMidiInput
{
    /// <summary>The name for the director.</summary>
    string Name { get; }

    /// <summary>Takes bytes that have arrived, without waiting. How many; 0 when there are none, or the device is gone.</summary>
    int Take(Span<byte> bytes);

    /// <summary>False once the device is known to be gone.</summary>
    bool IsThere => true;

    /// <summary>Waits until bytes may have come, for so long at most.</summary>
    void Await(TimeSpan most) => ShortWait.Pass();

    /// <summary>Lets go of the device. May be called again, to no effect.</summary>
    void Close();
}
