using WarmupConsole.Midi.Messages;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Midi.Synthesis;

/// <summary>A struck-string tone of the program's own, for machines on which nothing else sounds. Plays every note of one channel, and the pedal.</summary>
public sealed class StringTone : IToneSource
{
    /// <summary>More notes than this at once are left out; hands and pedal of a warm-up need fewer.</summary>
    public const int MostVoices = 64;

    private const int PedalDown = 64;
    private readonly StringVoice[] _voices = [.. Enumerable.Range(0, MostVoices).Select(_ => new StringVoice())];
    private readonly double[] _hertz;
    private readonly int _sampleRate;
    private readonly bool[] _onPedal = new bool[128];
    private bool _pedal;

    /// <param name="tuning">Where A4 lies.</param>
    /// <param name="sampleRate">Samples a second.</param>
    public StringTone(Tuning tuning, int sampleRate) =>
        (_hertz, _sampleRate) = ([.. Enumerable.Range(0, 128).Select(tuning.FrequencyHertz)], sampleRate);

    /// <summary>How many strings sound.</summary>
    public int Sounding => _voices.Count(voice => voice.Sounds);

    public void Handle(MidiMessage message)
    {
        switch (message.Kind)
        {
            case MidiMessageKind.NoteOn:
                Begin(message.Data1, message.Data2);
                break;
            case MidiMessageKind.NoteOff:
                End(message.Data1);
                break;
            case MidiMessageKind.ControlChange when message.Data1 == MidiConstants.DamperPedal:
                Pedal(message.Data2 >= PedalDown);
                break;
            case MidiMessageKind.ControlChange when message.Data1 == MidiConstants.AllNotesOff:
                Pedal(false);
                ReleaseAll();
                break;
        }
    }

    public void Render(Span<float> samples)
    {
        samples.Clear();
        foreach (StringVoice voice in _voices)
        {
            voice.AddTo(samples);
        }
    }

    public void Silence()
    {
        foreach (StringVoice voice in _voices)
        {
            voice.Stop();
        }

        Array.Clear(_onPedal);
        _pedal = false;
    }

    public void Dispose()
    {
    }

    private void Begin(int key, int velocity)
    {
        Release(key);
        _onPedal[key] = false;
        foreach (StringVoice voice in _voices)
        {
            if (!voice.Sounds)
            {
                voice.Strike(key, _hertz[key], velocity, _sampleRate);
                return;
            }
        }
    }

    private void End(int key)
    {
        if (_pedal)
        {
            _onPedal[key] = true;
        }
        else
        {
            Release(key);
        }
    }

    private void Pedal(bool down)
    {
        _pedal = down;
        for (int key = 0; !down && key < _onPedal.Length; key++)
        {
            if (_onPedal[key])
            {
                _onPedal[key] = false;
                Release(key);
            }
        }
    }

    private void Release(int key)
    {
        foreach (StringVoice voice in _voices)
        {
            if (voice.Key == key)
            {
                voice.Release(_sampleRate);
            }
        }
    }

    private void ReleaseAll()
    {
        foreach (StringVoice voice in _voices)
        {
            if (voice.Key >= 0)
            {
                voice.Release(_sampleRate);
            }
        }
    }
}
