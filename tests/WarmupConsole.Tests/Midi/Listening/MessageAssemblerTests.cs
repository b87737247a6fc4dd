using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Messages;

namespace WarmupConsole.Tests.Midi.Listening;

/// <summary>Streams as the MIDI 1.0 Detailed Specification 4.2 allows them ("running status", "system real time messages").</summary>
public sealed class MessageAssemblerTests
{
    [Theory]
    [InlineData("90 3C 40  80 3C 40", "NoteOn 60 64, NoteOff 60 64")] // note on, note off
    [InlineData("90 3C 40  3C 00", "NoteOn 60 64, NoteOff 60 0")] // running status; velocity 0 is a note-off
    [InlineData("90 3C FE 40", "NoteOn 60 64")] // active sensing within a message
    [InlineData("F8 90 F8 3C F8 40 F8", "NoteOn 60 64")] // clock everywhere
    [InlineData("3C 40 90 3C 40", "NoteOn 60 64")] // data that belong to nothing: the cable was put in late
    [InlineData("90 3C 40 F0 7E 7F 09 01 F7 3E 40 90 3E 40", "NoteOn 60 64, NoteOn 62 64")] // system exclusive ends running status
    [InlineData("C0 05 90 3C 40", "ProgramChange 5 0, NoteOn 60 64")] // one data byte
    [InlineData("D0 22 23 90 3C 40", "NoteOn 60 64")] // channel pressure is none of ours, nor is what runs on after it
    [InlineData("E0 00 40 90 3C 40", "NoteOn 60 64")] // pitch bend is none of ours
    [InlineData("90 3C 90 3E 40", "NoteOn 62 64")] // cut short by the next status
    [InlineData("B0 40 7F", "ControlChange 64 127")]
    public void Messages_are_found_as_a_cable_brings_them(string bytes, string messages) =>
        Assert.Equal(messages, string.Join(", ", Read(Hex.Bytes(bytes)).Select(message => $"{message.Kind} {message.Data1} {message.Data2}")));

    [Fact]
    public void Any_bytes_at_all_are_read_without_a_fault()
    {
        Random random = new(8);
        byte[] bytes = new byte[100_000];
        random.NextBytes(bytes);
        Assert.All(Read(bytes), message => Assert.InRange(message.Data1, 0, 127));
    }

    private static List<MidiMessage> Read(byte[] bytes)
    {
        MessageAssembler assembler = new();
        return [.. bytes.Select(next => assembler.Take(next)).OfType<MidiMessage>()];
    }
}
