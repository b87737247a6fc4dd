using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Tests.Midi.Protocol;

public class FrameTests
{
    private static readonly Frame[] OneOfEach =
    [
        new Frame.Hello(ProtocolConstants.Version),
        new Frame.OpenPort(PortChoice.First),
        new Frame.OpenPort(PortChoice.Named("Klavier groß")),
        new Frame.SetTimeline(3, new(Tempo.FromMilliBeatsPerMinute(88_500), Beats.FromBeats(-4), new(123_456_789_012))),
        new Frame.Notes(3, [new(60, Beats.FromBeats(-1), Beats.FromFraction(1, 3), 100), new(127, Beats.Zero, new(1), 1)]),
        new Frame.Notes(long.MaxValue, [.. Enumerable.Repeat(new ScoreNote(0, Beats.Zero, new(uint.MaxValue), 127), ProtocolConstants.MostNotesInFrame)]),
        new Frame.Silence(4),
        new Frame.Quit(),
        new Frame.Ready(ProtocolConstants.Version),
        new Frame.PortOpened("Playing on a → b."),
        new Frame.PortFailed("No."),
        new Frame.PortLost(""),
        new Frame.Silenced(4, new(5)),
        new Frame.Refused("Full."),
        new Frame.Onsets(new OnsetFigures(10, 1, 2, 3, 4)),
        new Frame.Heard(MidiMessage.Control(0, 64, 127)),
        new Frame.InputOpened("Listening."),
        new Frame.InputLost("Gone."),
    ];

    public static TheoryData<int> Each => [.. Enumerable.Range(0, OneOfEach.Length)];

    [Fact]
    public void Every_kind_of_frame_is_in_the_list_of_these_tests() =>
        Assert.Equal(typeof(Frame).GetNestedTypes().Select(t => t.Name).Order(), OneOfEach.Select(f => f.GetType().Name).Distinct().Order());

    [Fact]
    public void A_silence_has_these_bytes() => Assert.Equal(
        Hex.Annotated("""
            08 00                    # length of the payload
            05                       # silence
            02 00 00 00 00 00 00 00  # generation 2
            72 5E F2 ED              # FNV-1a over all of the above
            """),
        Bytes(new Frame.Silence(2)));

    [Theory]
    [MemberData(nameof(Each))]
    public void A_frame_is_read_as_it_was_written(int index)
    {
        FrameReader reader = new(new MemoryStream(Bytes(OneOfEach[index])));

        Assert.Equal(Text(OneOfEach[index]), Text(reader.Read()));
        Assert.Null(reader.Read());
    }

    [Theory]
    [MemberData(nameof(Each))]
    public void A_frame_cut_anywhere_is_a_protocol_error(int index)
    {
        byte[] bytes = Bytes(OneOfEach[index]);
        for (int length = 1; length < bytes.Length; length++)
        {
            Assert.Throws<ProtocolException>(() => new FrameReader(new MemoryStream(bytes, 0, length)).Read());
        }
    }

    [Theory]
    [MemberData(nameof(Each))]
    public void A_frame_with_any_byte_changed_is_a_protocol_error(int index)
    {
        byte[] bytes = Bytes(OneOfEach[index]);
        for (int at = 0; at < bytes.Length; at++)
        {
            foreach (byte change in (byte[])[0x01, 0x80, 0xFF])
            {
                byte[] changed = [.. bytes];
                changed[at] ^= change;
                Assert.Throws<ProtocolException>(() => new FrameReader(new MemoryStream(changed)).Read());
            }
        }
    }

    [Fact]
    public void Random_payloads_behind_a_right_check_are_frames_or_protocol_errors()
    {
        Random random = new(20261125);
        int frames = 0;
        for (int round = 0; round < 20_000; round++)
        {
            byte[] payload = new byte[random.Next(40)];
            random.NextBytes(payload);
            frames += ReadsAsFrame(Sealed((byte)random.Next(0x50), payload)) ? 1 : 0;
        }

        Assert.InRange(frames, 50, 10_000); // so both ways were taken
    }

    [Theory]
    [InlineData(0x03, "00 00 00 00 00 00 00 00  1F 4E 00 00  00 00 00 00 00 00 00 00  00 00 00 00 00 00 00 00", "Tempo 19999 is out of range (20000–300000).")]
    [InlineData(0x04, "00 00 00 00 00 00 00 00  00 00 00 00 00 00 00 00  00 00 00 00 3C 40", "Note length 0 is out of range (1–4294967295).")]
    [InlineData(0x04, "00 00 00 00 00 00 00 00  00 00 00 00 00 00 00 00  01 00 00 00 80 40", "Pitch 128 is out of range (0–127).")]
    [InlineData(0x04, "00 00 00 00 00 00 00 00  00 00 00 00 00 00 00 00  01 00 00 00 3C 00", "Velocity 0 is out of range (1–127).")]
    [InlineData(0x04, "00 00 00 00 00 00 00 00  00 00 00 00 00 00 00 40  01 00 00 00 3C 40", "Note start 4611686018427387904 is out of range (-549755813888–549755813888).")]
    [InlineData(0x02, "03", "Port choice 3 is out of range (0–2).")]
    [InlineData(0x04, "00 00 00 00 00 00 00 00", "A frame of type 04 cannot have 8 bytes.")]
    [InlineData(0x05, "00", "A frame of type 05 cannot have 1 bytes.")]
    [InlineData(0x06, "00", "A frame of type 06 cannot have 1 bytes.")]
    [InlineData(0x46, "C3 28", "The text of a frame of type 46 is not UTF-8.")]
    [InlineData(0x3F, "", "A frame of type 3F is unknown to version 1.")]
    public void A_payload_that_cannot_be_is_refused_with_the_reason(byte type, string payload, string sentence)
    {
        var error = Assert.Throws<ProtocolException>(() => new FrameReader(new MemoryStream(Sealed(type, Hex.Bytes(payload)))).Read());
        Assert.Equal(sentence, error.Message);
    }

    [Fact]
    public void A_frame_longer_than_allowed_is_refused_before_it_is_read()
    {
        var error = Assert.Throws<ProtocolException>(() => new FrameReader(new MemoryStream(Hex.Bytes("01 10 04"))).Read());
        Assert.Equal("A frame of 4097 bytes was announced; the longest allowed is 4096.", error.Message);
    }

    [Fact]
    public void A_text_that_is_too_long_is_cut_at_a_whole_character()
    {
        Frame? read = new FrameReader(new MemoryStream(Bytes(new Frame.Refused(new string('→', 2000))))).Read();
        Assert.Equal(new Frame.Refused(new string('→', ProtocolConstants.LongestPayload / 3)), read);
    }

    internal static byte[] Bytes(params Frame[] frames)
    {
        MemoryStream stream = new();
        FrameWriter writer = new(stream);
        Array.ForEach(frames, writer.Write);
        return stream.ToArray();
    }

    private static byte[] Sealed(byte type, byte[] payload)
    {
        byte[] open = [(byte)payload.Length, (byte)(payload.Length >> 8), type, .. payload];
        uint check = open.Aggregate(2166136261u, (hash, b) => unchecked((hash ^ b) * 16777619u));
        return [.. open, .. BitConverter.GetBytes(check)];
    }

    private static bool ReadsAsFrame(byte[] bytes)
    {
        try
        {
            return new FrameReader(new MemoryStream(bytes)).Read() is not null;
        }
        catch (ProtocolException)
        {
            return false;
        }
    }

    // Lists compare by identity, so what they hold is compared as text.
    private static string Text(Frame? frame) => frame is Frame.Notes notes ? $"{notes.Generation}: {string.Join(", ", notes.List)}" : $"{frame}";
}
