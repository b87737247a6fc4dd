using System.Runtime.InteropServices;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Synthesis;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Midi.Sound;

/// <summary>The FluidSynth library with a SoundFont as a tone source: it makes the samples, this program plays them.</summary>
public sealed unsafe class FluidSynthSource : IToneSource
{
    private const int Keys = 128;
    private const int CentsOfKey = 100;
    private const int MostAtOnce = 1024;

    private static readonly string[] Candidates = OperatingSystem.IsWindows() ? ["libfluidsynth-3.dll"]
        : OperatingSystem.IsMacOS() ? ["libfluidsynth.3.dylib", "/opt/homebrew/lib/libfluidsynth.3.dylib", "/usr/local/lib/libfluidsynth.3.dylib"]
        : ["libfluidsynth.so.3"];

    private readonly FluidSynthCalls _calls;
    private readonly nint _settings;
    private readonly nint _synth;
    private readonly float[] _right = new float[MostAtOnce];

    private FluidSynthSource(FluidSynthCalls calls, int sampleRate)
    {
        _calls = calls;
        _settings = calls.NewSettings();
        calls.SetNumber(_settings, "synth.sample-rate", sampleRate);
        calls.SetNumber(_settings, "synth.gain", 2);
        _synth = calls.NewSynth(_settings);
    }

    /// <summary>True when the library is there.</summary>
    public static bool IsInstalled => Load() != 0;

    /// <summary>Null when the library is not there or the SoundFont cannot be read.</summary>
    public static FluidSynthSource? TryCreate(string soundFont, Tuning tuning, int sampleRate)
    {
        nint library = Load();
        if (library == 0)
        {
            return null;
        }

        using QuietStandardError quiet = new();
        FluidSynthSource source = new(new FluidSynthCalls(library), sampleRate);
        if (source._synth != 0 && source._calls.LoadFont(source._synth, soundFont) >= 0)
        {
            source.Tune(tuning);
            return source;
        }

        source.Dispose();
        return null;
    }

    public void Handle(MidiMessage message)
    {
        switch (message.Kind)
        {
            case MidiMessageKind.NoteOn:
                _calls.NoteOn(_synth, message.Channel, message.Data1, message.Data2);
                break;
            case MidiMessageKind.NoteOff:
                _calls.NoteOff(_synth, message.Channel, message.Data1);
                break;
            case MidiMessageKind.ControlChange:
                _calls.Control(_synth, message.Channel, message.Data1, message.Data2);
                break;
            case MidiMessageKind.ProgramChange:
                _calls.Program(_synth, message.Channel, message.Data1);
                break;
        }
    }

    public void Render(Span<float> samples)
    {
        for (int at = 0; at < samples.Length; at += MostAtOnce)
        {
            Span<float> part = samples[at..Math.Min(samples.Length, at + MostAtOnce)];
            _calls.Write(_synth, part, _right);
            for (int i = 0; i < part.Length; i++)
            {
                part[i] = (part[i] + _right[i]) / 2;
            }
        }
    }

    public void Silence() => _calls.Control(_synth, MidiConstants.PianoChannel, MidiConstants.AllSoundOff, 0);

    public void Dispose()
    {
        _calls.DeleteSynth(_synth);
        _calls.DeleteSettings(_settings);
    }

    private static nint Load() => Candidates.Select(candidate => NativeLibrary.TryLoad(candidate, out nint handle) ? handle : 0).FirstOrDefault(handle => handle != 0);

    private void Tune(Tuning tuning)
    {
        double shift = CentsOfKey * 12 * Math.Log2(tuning.A4Hertz / Tuning.Iso16.A4Hertz);
        double[] cents = [.. Enumerable.Range(0, Keys).Select(key => (key * CentsOfKey) + shift)];
        _calls.Tune(_synth, MidiConstants.PianoChannel, cents);
    }
}
