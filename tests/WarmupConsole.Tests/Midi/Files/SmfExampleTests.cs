using NAudio.Midi;

namespace WarmupConsole.Tests.Midi.Files;

/// <summary>
/// The reader that the other tests rely on, against the worked examples and the table of quantities in
/// Standard MIDI Files 1.0 (RP-001, rev. February 1996; from memory).
/// </summary>
public class SmfExampleTests
{
    private const string Format0 = """
        4D 54 68 64 00 00 00 06 00 00 00 01 00 60  # MThd, format 0, 1 track, 96 ticks a quarter
        4D 54 72 6B 00 00 00 3B                    # MTrk, 59 bytes
        00 FF 58 04 04 02 18 08                    # 4/4
        00 FF 51 03 07 A1 20                       # 500,000 µs a quarter
        00 C0 05  00 C1 2E  00 C2 46               # programs
        00 92 30 60                                # channel 3: 48 on
        00 3C 60                                   # running status: 60 on
        60 91 43 40                                # channel 2: 67 on
        60 90 4C 20                                # channel 1: 76 on
        81 40 82 30 40                             # 48 off, 192 ticks later
        00 3C 40                                   # running status: 60 off
        00 81 43 40  00 80 4C 40  00 FF 2F 00
        """;

    private const string Format1 = """
        4D 54 68 64 00 00 00 06 00 01 00 04 00 60  # MThd, format 1, 4 tracks
        4D 54 72 6B 00 00 00 14  00 FF 58 04 04 02 18 08  00 FF 51 03 07 A1 20  83 00 FF 2F 00
        4D 54 72 6B 00 00 00 10  00 C0 05  81 40 90 4C 20  81 40 4C 00  00 FF 2F 00
        4D 54 72 6B 00 00 00 0F  00 C1 2E  60 91 43 40  82 20 43 00  00 FF 2F 00
        4D 54 72 6B 00 00 00 15  00 C2 46  00 92 30 60  00 3C 60  83 00 30 00  00 3C 00  00 FF 2F 00
        """;

    [Theory]
    [InlineData(Format0)]
    [InlineData(Format1)]
    public void The_specifications_example_holds_its_four_notes(string listing)
    {
        string[] notes = [.. Read(Hex.Annotated(listing)).OfType<NoteOnEvent>().Where(n => n.Velocity > 0).Select(n => $"{n.Channel}: {n.NoteNumber}@{n.AbsoluteTime}+{n.NoteLength}").Order()];

        Assert.Equal(["1: 76@192+192", "2: 67@96+288", "3: 48@0+384", "3: 60@0+384"], notes);
    }

    [Theory]
    [InlineData("00", 0x00)]
    [InlineData("40", 0x40)]
    [InlineData("7F", 0x7F)]
    [InlineData("81 00", 0x80)]
    [InlineData("C0 00", 0x2000)]
    [InlineData("FF 7F", 0x3FFF)]
    [InlineData("81 80 00", 0x4000)]
    [InlineData("C0 80 00", 0x100000)]
    [InlineData("FF FF 7F", 0x1FFFFF)]
    [InlineData("81 80 80 00", 0x200000)]
    [InlineData("C0 80 80 00", 0x8000000)]
    [InlineData("FF FF FF 7F", 0xFFFFFFF)]
    public void A_quantity_of_variable_length_is_written_and_read_as_in_the_table(string hex, int ticks)
    {
        byte[] quantity = Hex.Bytes(hex);
        byte[] file = [.. Hex.Bytes("4D 54 68 64 00 00 00 06 00 00 00 01 03 C0 4D 54 72 6B 00 00 00"), (byte)(quantity.Length + 3), .. quantity, 0xFF, 0x2F, 0x00];
        Assert.Equal(ticks, Assert.Single(Read(file)).AbsoluteTime);

        MidiEventCollection events = new(0, 960);
        events.AddTrack([new MetaEvent(MetaEventType.EndTrack, 0, ticks)]);
        using MemoryStream written = new();
        MidiFile.Export(written, events);
        Assert.Equal(file, written.ToArray());
    }

    internal static IEnumerable<MidiEvent> Read(byte[] file) => new MidiFile(new MemoryStream(file), true).Events.SelectMany(track => track);
}
