using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Synthesis;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Sound;

/// <summary>
/// A tone source on a loudspeaker, played like any other port. A thread of its own makes the samples, block by block, and allocates
/// nothing while it does. From a message to the loudspeaker it takes a block and the latency asked of the system: about 25 ms, the same for every note.
/// </summary>
public sealed class SoundPort : IMidiPort
{
    /// <summary>Samples a second.</summary>
    public const int SampleRate = 48000;

    /// <summary>How many samples are made at once: 2.7 ms, which is how far apart two notes may be moved.</summary>
    public const int BlockSamples = 128;

    /// <summary>What may wait at the loudspeaker.</summary>
    public const int LatencyMicroseconds = 20_000;

    private static readonly TimeSpan FurthestAhead = TimeSpan.FromMilliseconds(60);
    private static readonly TimeSpan ToClose = TimeSpan.FromSeconds(1);

    private readonly SystemMonotonicClock _clock = new();
    private readonly object _ends = new();
    private readonly IToneSource _source;
    private readonly IAudioOutput _output;
    private readonly SoundFeed _stream;
    private readonly Thread _thread;
    private volatile bool _isClosed;
    private volatile bool _isLost;

    /// <param name="name">For the director.</param>
    /// <param name="source">Ended with this port.</param>
    /// <param name="output">Closed with this port.</param>
    public SoundPort(string name, IToneSource source, IAudioOutput output)
    {
        (Name, _source, _output) = (name, source, output);
        _stream = new(source, SampleRate);
        _thread = new(Run) { IsBackground = true, Name = "sound", Priority = ThreadPriority.Highest };
        _thread.Start();
    }

    public string Name { get; }

    /// <summary>No cable: a loudspeaker is lost to the sound system.</summary>
    public string LostSentence => SoundTexts.Lost;

    public string BackSentence => SoundTexts.Back;

    /// <summary>What the source does not know is taken and has no effect.</summary>
    public bool Send(ReadOnlySpan<byte> message) =>
        !_isClosed && !_isLost && (!MidiMessage.TryDecode(message, out MidiMessage known) || _stream.TrySend(known));

    public string? Close()
    {
        if (!_isClosed)
        {
            _stream.TrySend(MidiMessage.Control(MidiConstants.PianoChannel, MidiConstants.AllSoundOff, 0));
            lock (_ends)
            {
                _isClosed = true;
                Monitor.Pulse(_ends);
            }

            _thread.Join(ToClose);
        }

        return null;
    }

    private void Run()
    {
        float[] samples = new float[BlockSamples];
        short[] block = new short[BlockSamples];
        Moment start = _clock.Now;
        long made = 0;
        while (!_isClosed && !_isLost)
        {
            Write(samples, block);
            made += BlockSamples;
            HoldBack(start, made);
        }

        for (int i = 0; i < SampleRate / 50 / BlockSamples && !_isLost; i++)
        {
            Write(samples, block); // the fade
        }

        _source.Dispose();
        _output.Close();
    }

    private void Write(float[] samples, short[] block)
    {
        _stream.Render(samples);
        for (int i = 0; i < block.Length; i++)
        {
            block[i] = (short)(samples[i] * short.MaxValue);
        }

        _isLost |= !_output.Write(block);
    }

    // A real loudspeaker makes the writer wait; one that takes everything at once must not be fed hours ahead.
    private void HoldBack(Moment start, long made)
    {
        TimeSpan ahead = TimeSpan.FromSeconds((double)made / SampleRate) - (_clock.Now - start);
        if (ahead > FurthestAhead)
        {
            lock (_ends)
            {
                _ = _isClosed || Monitor.Wait(_ends, ahead - (FurthestAhead / 2));
            }
        }
    }
}
