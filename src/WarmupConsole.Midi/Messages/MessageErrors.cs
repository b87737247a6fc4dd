namespace WarmupConsole.Midi.Messages;

/// <summary>What is said about messages that cannot be sent.</summary>
internal static class MessageErrors
{
    internal static ArgumentOutOfRangeException UnknownKind(MidiMessageKind kind) =>
        new(nameof(kind), kind, "This kind of message is not in the table of messages.");

    internal static ArgumentOutOfRangeException Channel(MessageRow row, int channel) =>
        new(nameof(channel), channel, $"The channel of a {row.Name} must be in the range 0–{MessageTable.HighestChannel}.");

    internal static ArgumentOutOfRangeException Field(MessageRow row, MessageField field, int value) =>
        new(field.Name, value, $"The {field.Name} of a {row.Name} must be in the range {field.Lowest}–{MessageTable.HighestDataByte}.");
}
