namespace WarmupConsole.Midi.Sound;

/// <summary>A loudspeaker. Used by one thread.</summary>
public interface IAudioOutput
{
    /// <summary>Hands samples on, one channel, and waits while there is no room. False when the loudspeaker is lost.</summary>
    bool Write(ReadOnlySpan<short> samples);

    /// <summary>Lets what was handed on sound to its end, and lets go.</summary>
    void Close();
}
