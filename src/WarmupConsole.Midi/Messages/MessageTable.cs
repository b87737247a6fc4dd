namespace WarmupConsole.Midi.Messages;

/// <summary>
/// One row a message: kind, name, first and second data byte with their lowest value (the highest is 127 throughout).
/// Encoding, decoding and checking all read this table. Source: MIDI 1.0 Detailed Specification 4.2, table 1.
/// </summary>
internal static class MessageTable
{
    internal const int HighestDataByte = 127;
    internal const int HighestChannel = 15;

    internal static readonly MessageRow[] Rows =
    [
        new(MidiMessageKind.NoteOff, "note off", new("pitch", 0), new("velocity", 0)),
        new(MidiMessageKind.NoteOn, "note on", new("pitch", 0), new("velocity", 1)), // velocity 0 would be a note-off
        new(MidiMessageKind.ControlChange, "control change", new("controller", 0), new("value", 0)),
        new(MidiMessageKind.ProgramChange, "program change", new("program", 0), null),
    ];

    internal static MessageRow? Find(int kind)
    {
        foreach (MessageRow row in Rows)
        {
            if ((int)row.Kind == kind)
            {
                return row;
            }
        }

        return null;
    }
}
