using WarmupConsole.Midi.Messages;

namespace WarmupConsole.Midi.Synthesis;

/// <summary>
/// What goes to the loudspeaker: a tone source behind a quiet start, a fade for "all sound off" and a limiter. Messages come from one
/// thread, samples are taken by another.
/// </summary>
public sealed class SoundFeed(IToneSource source, int sampleRate)
{
    /// <summary>"All sound off" is a fade of so many seconds: short enough for silence at a key press, long enough for no click.</summary>
    public const double FadeSeconds = 0.005;

    /// <summary>Nobody knows how loud the machine is set: the first notes come at a quarter of their loudness and grow for so many seconds of sound.</summary>
    public const double QuietSeconds = 6;

    private const float QuietGain = 0.25f;
    private const float Audible = 1e-4f;
    private const float Knee = 0.7f;

    private readonly MessageRing _messages = new();
    private readonly int _fadeSamples = Math.Max(1, (int)(FadeSeconds * sampleRate));
    private long _heard;
    private int _fade;

    /// <summary>False when nobody has taken samples for long.</summary>
    public bool TrySend(MidiMessage message) => _messages.TryAdd(message);

    /// <summary>The next samples, each between −1 and 1.</summary>
    public void Render(Span<float> samples)
    {
        while (_fade == 0 && _messages.TryTake(out MidiMessage message))
        {
            Take(message);
        }

        source.Render(samples);
        float gain = QuietGain + ((1 - QuietGain) * (float)Math.Min(1, _heard / (QuietSeconds * sampleRate)));
        bool wasFading = _fade > 0;
        bool heard = false;
        foreach (ref float sample in samples)
        {
            heard |= Math.Abs(sample) > Audible;
            sample = Limited(sample * gain * Fading());
        }

        _heard += heard ? samples.Length : 0;
        if (wasFading && _fade == 1)
        {
            _fade = 0;
            source.Silence();
        }
    }

    private void Take(MidiMessage message)
    {
        if (message.Kind == MidiMessageKind.ControlChange && message.Data1 == MidiConstants.AllSoundOff)
        {
            _fade = _fadeSamples + 1;
        }
        else
        {
            source.Handle(message);
        }
    }

    // Counts down to 1, where nothing is heard any more; 0 is no fade.
    private float Fading()
    {
        _fade = _fade > 1 ? _fade - 1 : _fade;
        return _fade == 0 ? 1 : (_fade - 1) / (float)_fadeSamples;
    }

    /// <summary>Unchanged up to the knee, above it bent so that 1 is never reached.</summary>
    private static float Limited(float sample)
    {
        float size = Math.Abs(sample);
        return size <= Knee ? sample : Math.Sign(sample) * (Knee + ((1 - Knee) * MathF.Tanh((size - Knee) / (1 - Knee))));
    }
}
