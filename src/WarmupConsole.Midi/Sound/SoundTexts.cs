namespace WarmupConsole.Midi.Sound;

/// <summary>What the director is told about sound without an instrument.</summary>
internal static class SoundTexts
{
    internal const string Tone = "the program's own tone";
    internal const string FluidSynth = "FluidSynth";
    internal const string NoSoundFont = "FluidSynth is there, but no SoundFont (Debian, Ubuntu: apt install timgm6mb-soundfont)";
    internal const string NoFluidSynth = "FluidSynth is not installed (Debian, Ubuntu: apt install libfluidsynth3)";

    internal const string NoLoudspeaker =
        "This machine's loudspeaker cannot be used: it has no sound card, or another program holds it, or (on Linux) libasound2 is not installed. Connect a piano over MIDI, or mend that.";

    internal const string Lost = "This machine's loudspeaker was lost: look at its sound settings, and at what was unplugged. The music waits; it plays again as soon as it can.";
    internal const string Back = "This machine's loudspeaker plays again. Space goes on.";

    internal static string WouldBeSoundFont(string font) => $"Without a device this machine's loudspeaker would play: FluidSynth with {font}.";

    internal static string WouldBeTone(string why) => $"Without a device this machine's loudspeaker would play {Tone}: {why}.";

    internal static string Playing(string name) => $"No piano: this loudspeaker plays ({name}). It begins quietly; turn it up only once you hear it.";
}
