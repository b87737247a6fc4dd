namespace WarmupConsole.Midi.Messages;

/// <summary>Numbers of MIDI 1.0 and General MIDI that the console uses.</summary>
public static class MidiConstants
{
    /// <summary>Everything is played on the first channel.</summary>
    public const int PianoChannel = 0;

    /// <summary>General MIDI program 1 of the written list, 0 on the wire.</summary>
    public const int GrandPiano = 0;

    /// <summary>General MIDI program 53 of the written list: sustained voices, for the parts of a written warm-up.</summary>
    public const int ChoirAahs = 52;

    public const int DamperPedal = 64;
    public const int AllSoundOff = 120;
    public const int AllNotesOff = 123;

    /// <summary>The release velocity of an instrument that has none (MIDI 1.0, "note off").</summary>
    public const int ReleaseVelocity = 64;
}
