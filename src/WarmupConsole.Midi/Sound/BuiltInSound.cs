using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Synthesis;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Midi.Sound;

/// <summary>Sound without any instrument: FluidSynth where library and SoundFont are found, else a tone of our own, on this machine's loudspeaker.</summary>
public static class BuiltInSound
{
    /// <summary>As it is asked for as a port.</summary>
    public const string Name = "built-in";

    /// <summary>The same, but never FluidSynth.</summary>
    public const string ToneName = "built-in tone";

    /// <summary>True when the wish is for this and no device.</summary>
    public static bool IsWished(PortChoice choice) => choice.Kind == PortChoiceKind.Named && choice.Name is Name or ToneName;

    /// <summary>What would sound, and why; without a loudspeaker, how to get one.</summary>
    public static SoundOutlook Outlook()
    {
        if (AudioOutputs.TryOpen() is not { } output)
        {
            return new(false, SoundTexts.NoLoudspeaker);
        }

        output.Close();
        return new(true, (FluidSynthSource.IsInstalled, SoundFonts.Find()) switch
        {
            (true, { } font) => SoundTexts.WouldBeSoundFont(font),
            (true, null) => SoundTexts.WouldBeTone(SoundTexts.NoSoundFont),
            _ => SoundTexts.WouldBeTone(SoundTexts.NoFluidSynth),
        });
    }

    /// <summary>True when the loudspeaker can be opened now.</summary>
    public static bool Plays()
    {
        IAudioOutput? output = AudioOutputs.TryOpen();
        output?.Close();
        return output is not null;
    }

    /// <summary>Opens it; null without a loudspeaker.</summary>
    internal static PortOpening? TryOpen(PortChoice choice, Tuning tuning)
    {
        if (AudioOutputs.TryOpen() is not { } output)
        {
            return null;
        }

        FluidSynthSource? fluid = choice.Name != ToneName && SoundFonts.Find() is { } font ? FluidSynthSource.TryCreate(font, tuning, SoundPort.SampleRate) : null;
        string name = fluid is null ? SoundTexts.Tone : SoundTexts.FluidSynth;
        IToneSource source = fluid is null ? new StringTone(tuning, SoundPort.SampleRate) : fluid;
        return new(new SoundPort(name, source, output), true, SoundTexts.Playing(name));
    }
}
