namespace WarmupConsole.Midi.Messages;

/// <summary>One row of <see cref="MessageTable"/>; a message without a second data byte has none here.</summary>
internal sealed record MessageRow(MidiMessageKind Kind, string Name, MessageField First, MessageField? Second)
{
    /// <summary>Bytes on the wire, status byte included.</summary>
    internal int Length => Second is null ? 2 : 3;
}
