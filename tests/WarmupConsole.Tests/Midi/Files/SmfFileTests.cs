using NAudio.Midi;
using WarmupConsole.Midi.Files;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using static WarmupConsole.Tests.Midi.Playing.EngineBench;

namespace WarmupConsole.Tests.Midi.Files;

public sealed class SmfFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("warmup-smf-").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public void A_small_performance_has_these_bytes()
    {
        TimedMessage[] played =
        [
            new(Second(7), Hex.Bytes("C0 00")),
            new(Second(7), Hex.Bytes("90 3C 64")),
            new(Second(7.5), Hex.Bytes("80 3C 40")),
            new(Second(7.5), Hex.Bytes("90 3C 65")),
            new(Second(8.5), Hex.Bytes("80 3C 40")),
            new(Second(8.5), Hex.Bytes("B0 7B 00")),
        ];

        Assert.Equal(
            Hex.Of(Hex.Annotated("""
                4D 54 68 64 00 00 00 06     # MThd, 6 bytes
                00 00 00 01 03 C0           # format 0, 1 track, 960 ticks a beat
                4D 54 72 6B 00 00 00 2F     # MTrk, 47 bytes
                00 FF 03 07 61 20 E2 86 92 20 62  # track name "a → b" in UTF-8
                00 FF 51 03 07 A1 20        # 500,000 µs a beat: 120 bpm
                00 C0 00                    # grand piano
                00 90 3C 64                 # C4 on
                87 40 80 3C 40              # 960 ticks later off
                00 90 3C 65                 # and on again, after the off
                8F 00 80 3C 40              # 1920 ticks later off
                00 B0 7B 00                 # all notes off
                00 FF 2F 00                 # end of track
                """)),
            Hex.Of(SmfFile.Build("a → b", Tempo.FromBeatsPerMinute(120), played)));
    }

    [Theory] // checks: round(60,000,000 / bpm)
    [InlineData(60, "0F 42 40")]
    [InlineData(72, "0C B7 35")]
    [InlineData(88, "0A 67 5A")]
    [InlineData(96, "09 89 68")]
    [InlineData(100, "09 27 C0")]
    [InlineData(108, "08 7A 24")]
    [InlineData(120, "07 A1 20")]
    [InlineData(20, "2D C6 C0")] // the slowest allowed stays within 24 bits
    public void The_tempo_is_in_microseconds_a_beat(int beatsPerMinute, string hex) =>
        Assert.Contains($"FF 51 03 {hex}", Hex.Of(SmfFile.Build("", Tempo.FromBeatsPerMinute(beatsPerMinute), [])), StringComparison.Ordinal);

    [Fact]
    public void A_recorded_performance_is_read_back_with_its_notes_and_times()
    {
        string path = Path.Combine(_folder, "evening.mid");
        VirtualClock clock = new();
        FileRecorder recorder = FileRecorder.Smf(path, clock);
        Assert.Null(recorder.TryPlace());
        using (InProcessPlayer player = new(clock, _ => new(recorder, true, "")))
        {
            player.Open(PortChoice.First);
            player.SetTimeline(0, AtSixty);
            player.Play(0, PortTest.Notes());
            player.Advance(Second(20));
        }

        NoteOnEvent[] notes = [.. SmfExampleTests.Read(File.ReadAllBytes(path)).OfType<NoteOnEvent>()];
        Assert.Equal(PortTest.Notes().Select(n => (n.Midi, n.Velocity)), notes.Select(n => (n.NoteNumber, n.Velocity)));
        // 120 beats a minute in the file, 60 in the music: twice the ticks.
        Assert.Equal(PortTest.Notes().Select(n => (n.Start.Ticks * 2, n.Length.Ticks * 2)), notes.Select(n => (n.AbsoluteTime, (long)n.NoteLength)));
        Assert.Equal(["evening.mid"], Directory.GetFiles(_folder).Select(Path.GetFileName));
    }

    [Fact]
    public void A_recording_that_is_there_already_is_kept()
    {
        string path = Path.Combine(_folder, "old.mid");
        File.WriteAllText(path, "old");

        Assert.Equal($"The recording {path} is there already and is not overwritten. Choose another name.", FileRecorder.Smf(path, new VirtualClock()).TryPlace());
        Assert.Equal("old", File.ReadAllText(path));
    }

    [Fact]
    public void A_place_that_cannot_be_written_to_is_known_before_the_music()
    {
        string path = Path.Combine(_folder, "missing", "a.mid");
        string? trouble = FileRecorder.Smf(path, new VirtualClock()).TryPlace();
        Assert.StartsWith($"The recording {path} could not be written: ", trouble, StringComparison.Ordinal);
    }

    [Fact]
    public void A_recorder_closes_once()
    {
        string path = Path.Combine(_folder, "once.mid");
        FileRecorder recorder = FileRecorder.Smf(path, new VirtualClock());
        recorder.Close();
        File.Delete(path);

        Assert.Null(recorder.Close());
        Assert.False(File.Exists(path));
    }

    [Fact]
    public void A_trace_has_a_line_for_each_message_with_its_moment_and_bytes()
    {
        string path = Path.Combine(_folder, "evening.trace");
        VirtualClock clock = new();
        FileRecorder trace = FileRecorder.Trace(path, clock);
        Assert.Null(trace.TryPlace());

        clock.MoveTo(new(1_000_000_007));
        trace.Send([0x90, 60, 64]);
        clock.MoveTo(new(2_500_000_000));
        trace.Send([0xC0, 0]);
        trace.Close();

        Assert.Equal(["1000000007 903C40", "2500000000 C000"], File.ReadAllLines(path));
    }
}
