namespace WarmupConsole.Midi.Messages;

/// <summary>What ends every sound after the note-offs of the sounding notes; the order matters.</summary>
public static class Panic
{
    // The pedal first: with it down receivers keep the notes in spite of "all notes off"; "all sound off" ends the rest.
    private static readonly MidiMessage[] Sequence =
    [
        MidiMessage.Control(MidiConstants.PianoChannel, MidiConstants.DamperPedal, 0),
        MidiMessage.Control(MidiConstants.PianoChannel, MidiConstants.AllNotesOff, 0),
        MidiMessage.Control(MidiConstants.PianoChannel, MidiConstants.AllSoundOff, 0),
    ];

    public static ReadOnlySpan<MidiMessage> Messages => Sequence;
}
