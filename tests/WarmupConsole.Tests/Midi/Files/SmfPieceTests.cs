using WarmupConsole.Midi.Files;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Writing;

namespace WarmupConsole.Tests.Midi.Files;

public sealed class SmfPieceTests
{
    private static readonly Beats One = Beats.FromBeats(1);

    private static readonly WrittenPiece Small = new()
    {
        Title = "a → b",
        Remarks = ["Stop when it hurts."],
        Tempos = [new(Beats.Zero, Tempo.FromBeatsPerMinute(88)), new(One * 4, Tempo.FromBeatsPerMinute(96))],
        Meters = [new(Beats.Zero, new(4, 4)), new(One * 4, new(9, 8))],
        Keys = [new(Beats.Zero, new Key(Step.D, -1, Mode.Major)), new(One * 4, new Key(Step.C, 1, Mode.Minor))],
        Markers = [new(Beats.Zero, "1. Hum in Db major")],
        Tracks =
        [
            new("Piano", false, [new(61, Beats.Zero, One * 2, 58), new(61, One * 2, One, 59)], []),
            new("Alto", true, [new(65, One, One, 68)], [new(One, "nʊ")]),
        ],
        Length = new((One * 8).Ticks + (One.Ticks / 2)),
    };

    [Fact]
    public void A_small_piece_has_these_bytes() => Assert.Equal(
        Hex.Of(Hex.Annotated("""
            4D 54 68 64 00 00 00 06     # MThd, 6 bytes
            00 01 00 03 03 C0           # format 1, 3 tracks, 960 ticks a quarter
            4D 54 72 6B 00 00 00 68     # MTrk, 104 bytes: the course of the piece
            00 FF 03 07 61 20 E2 86 92 20 62                             # name "a → b" in UTF-8
            00 FF 01 13 53 74 6F 70 20 77 68 65 6E 20 69 74 20 68 75 72 74 73 2E  # text "Stop when it hurts."
            00 FF 51 03 0A 67 5A        # 681,818 µs a quarter: 88 bpm
            00 FF 58 04 04 02 18 08     # 4/4, 24 clocks a click, 8 thirty-seconds a quarter
            00 FF 59 02 FB 00           # five flats, major
            00 FF 06 12 31 2E 20 48 75 6D 20 69 6E 20 44 62 20 6D 61 6A 6F 72     # marker "1. Hum in Db major"
            9E 00 FF 51 03 09 89 68     # 3840 ticks later: 625,000 µs a quarter: 96 bpm
            00 FF 58 04 09 03 18 08     # 9/8
            00 FF 59 02 04 01           # four sharps, minor
            A1 60 FF 2F 00              # 4320 ticks later the end
            4D 54 72 6B 00 00 00 23     # MTrk, 35 bytes: the piano
            00 FF 03 05 50 69 61 6E 6F  # name "Piano"
            00 C0 00                    # grand piano on channel 1
            00 90 3D 3A                 # C#4 on, velocity 58
            8F 00 80 3D 40              # 1920 ticks later off
            00 90 3D 3B                 # and on again, after the off
            87 40 80 3D 40              # 960 ticks later off
            A9 20 FF 2F 00              # 5280 ticks later the end
            4D 54 72 6B 00 00 00 21     # MTrk, 33 bytes: a part
            00 FF 03 04 41 6C 74 6F     # name "Alto"
            00 C1 34                    # choir aahs on channel 2
            87 40 FF 05 03 6E CA 8A     # 960 ticks later the word "nʊ" in UTF-8
            00 91 41 44                 # F4 on, velocity 68
            87 40 81 41 40              # 960 ticks later off
            B0 60 FF 2F 00              # 6240 ticks later the end
            """)),
        Hex.Of(SmfPiece.Build(Small)));

    [Fact]
    public void Voices_have_channels_of_their_own_and_leave_the_percussions_alone()
    {
        WrittenPiece many = Small with { Tracks = [.. Enumerable.Range(0, SmfPiece.MostTracks).Select(index => new WrittenTrack($"{index}", index > 0, [new(60, Beats.Zero, One, 60)], []))] };
        Assert.Equal(
            [1, 2, 3, 4, 5, 6, 7, 8, 9, 11, 12, 13, 14, 15, 16],
            SmfExampleTests.Read(SmfPiece.Build(many)).OfType<NAudio.Midi.NoteOnEvent>().Select(on => on.Channel));
        Assert.Throws<ArgumentException>(() => SmfPiece.Build(many with { Tracks = [.. many.Tracks, many.Tracks[0]] }));
    }
}
