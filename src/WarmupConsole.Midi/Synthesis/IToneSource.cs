using WarmupConsole.Midi.Messages;

namespace WarmupConsole.Midi.Synthesis;

/// <summary>Makes sound of messages, without a clock of its own: time is the number of samples asked for. Used by one thread; allocates nothing.</summary>
public interface IToneSource : IDisposable
{
    /// <summary>Takes effect at the next sample.</summary>
    void Handle(MidiMessage message);

    /// <summary>The next samples, in place of what is there.</summary>
    void Render(Span<float> samples);

    /// <summary>Ends everything at once, whatever that does to the wave: called when nothing is heard any more.</summary>
    void Silence();
}
