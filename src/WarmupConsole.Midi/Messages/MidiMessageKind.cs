namespace WarmupConsole.Midi.Messages;

/// <summary>The channel messages that the console sends; the value is the status byte on the first channel.</summary>
public enum MidiMessageKind
{
    NoteOff = 0x80,
    NoteOn = 0x90,
    ControlChange = 0xB0,
    ProgramChange = 0xC0,
}
