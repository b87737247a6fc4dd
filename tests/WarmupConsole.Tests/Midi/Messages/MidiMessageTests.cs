using WarmupConsole.Midi.Messages;

namespace WarmupConsole.Tests.Midi.Messages;

/// <summary>Status and data bytes: MIDI 1.0 Detailed Specification 4.2, "channel voice messages" (from memory).</summary>
public class MidiMessageTests
{
    public static TheoryData<MidiMessage, string> Bytes => new()
    {
        { MidiMessage.NoteOn(0, 60, 100), "90 3C 64" },
        { MidiMessage.NoteOn(15, 127, 1), "9F 7F 01" },
        { MidiMessage.NoteOff(0, 60), "80 3C 40" },
        { MidiMessage.Control(0, MidiConstants.DamperPedal, 0), "B0 40 00" },
        { MidiMessage.Program(0, MidiConstants.GrandPiano), "C0 00" },
        { MidiMessage.Program(9, 127), "C9 7F" },
    };

    public static TheoryData<MidiMessage, string> OutOfRange => new()
    {
        { MidiMessage.NoteOn(0, 128, 64), "The pitch of a note on must be in the range 0–127." },
        { MidiMessage.NoteOn(0, 60, 0), "The velocity of a note on must be in the range 1–127." },
        { MidiMessage.NoteOn(16, 60, 64), "The channel of a note on must be in the range 0–15." },
        { MidiMessage.Control(0, -1, 0), "The controller of a control change must be in the range 0–127." },
        { MidiMessage.Control(0, 64, 200), "The value of a control change must be in the range 0–127." },
        { MidiMessage.Program(0, 128), "The program of a program change must be in the range 0–127." },
        { new MidiMessage((MidiMessageKind)0xE0, 0, 0), "This kind of message is not in the table of messages." },
    };

    [Theory]
    [MemberData(nameof(Bytes))]
    public void A_message_has_these_bytes_and_is_read_back_from_them(MidiMessage message, string hex)
    {
        Span<byte> bytes = stackalloc byte[MidiMessage.LongestLength];
        Span<byte> written = bytes[..message.Encode(bytes)];

        Assert.Equal(hex, Hex.Of(written));
        Assert.True(MidiMessage.TryDecode(written, out MidiMessage read));
        Assert.Equal(message, read);
    }

    [Theory]
    [MemberData(nameof(OutOfRange))]
    public void A_field_out_of_range_is_named_with_its_range(MidiMessage message, string sentence)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => message.Encode(new byte[MidiMessage.LongestLength]));
        Assert.StartsWith(sentence, error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_note_on_of_velocity_0_is_read_as_a_note_off()
    {
        Assert.True(MidiMessage.TryDecode(Hex.Bytes("93 3C 00"), out MidiMessage message));
        Assert.Equal(new MidiMessage(MidiMessageKind.NoteOff, 3, 60), message);
    }

    [Theory]
    [InlineData("")]
    [InlineData("3C 40")] // running status: only whole messages are sent and read
    [InlineData("90 3C")]
    [InlineData("90 3C 40 00")]
    [InlineData("90 80 40")]
    [InlineData("C0 00 00")]
    [InlineData("E0 00 40")]
    [InlineData("F8")]
    public void Bytes_that_are_no_message_of_the_table_are_refused(string hex) =>
        Assert.False(MidiMessage.TryDecode(Hex.Bytes(hex), out _));

    [Fact]
    public void Panic_lifts_the_pedal_then_ends_the_notes_then_ends_every_sound()
    {
        byte[] bytes = new byte[MidiMessage.LongestLength];
        IEnumerable<string> sent = Panic.Messages.ToArray().Select(m => Hex.Of(bytes.AsSpan(0, m.Encode(bytes))));

        Assert.Equal(["B0 40 00", "B0 7B 00", "B0 78 00"], sent);
    }
}
