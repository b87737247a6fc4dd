using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Tests.Support;
using static WarmupConsole.Tests.Midi.Playing.EngineBench;

namespace WarmupConsole.Tests.Midi.Player;

public sealed class InProcessPlayerTests : IDisposable
{
    private readonly VirtualClock _clock = new();
    private readonly RecordingPort _port;
    private readonly InProcessPlayer _player;
    private readonly List<PlayerReport> _reports = [];

    public InProcessPlayerTests()
    {
        _port = new(_clock);
        _player = new(_clock, _ => new(_port, true, "Playing."));
        _player.Reported += _reports.Add;
        _player.Open(PortChoice.First);
        _player.SetTimeline(0, AtSixty);
    }

    public void Dispose() => _player.Dispose();

    [Fact]
    public void Opening_is_reported() => Assert.Equal([new(PlayerReportKind.PortOpened, "Playing.")], _reports);

    [Fact]
    public void A_long_song_is_played_whole_and_exactly_on_time()
    {
        // An hour at 88 bpm, a third of a beat each: an error that adds up would show.
        Timeline timeline = new(Tempo.FromBeatsPerMinute(88), Beats.Zero, Second(1));
        ScoreNote[] song = [.. Enumerable.Range(0, 88 * 60 * 3).Select(i => new ScoreNote(40 + (i % 40), Beats.FromFraction(i, 3), Beats.FromFraction(1, 6), 64))];
        _player.SetTimeline(0, timeline);
        _player.Play(0, song);
        _player.Advance(Second(3700));

        Moment[] onsets = [.. _port.Sent.Where(m => m.Bytes.Span[0] == 0x90).Select(m => m.At)];
        Assert.Equal(song.Select(n => timeline.TimeAt(n.Start)), onsets);
    }

    [Fact]
    public void Two_bars_are_passed_on_and_the_next_call_is_asked_for_a_bar_before_the_rest()
    {
        _player.Play(0, [Note(60, 8, 1), Note(62, 8.5, 1), Note(64, 14, 1)]);

        Assert.Equal(Second(4.5), _player.Pump(Second(0)));
        Assert.Equal(Second(10), _player.Pump(Second(4.5)));
        Assert.Null(_player.Pump(Second(10)));
    }

    [Fact]
    public void Notes_given_in_any_order_and_in_any_number_are_played()
    {
        ScoreNote[] notes = [.. Enumerable.Range(0, 3000).Select(i => Note(i % 100, 30 - (i / 100), 0.25))];
        _player.Play(0, notes);
        _player.Advance(Second(60));

        Assert.Equal(3000, _port.Sent.Count(m => m.Bytes.Span[0] == 0x90));
        Assert.Single(_reports);
    }

    [Fact]
    public void What_was_not_yet_passed_on_is_forgotten_by_a_silence_too()
    {
        _player.Play(0, [Note(60, 20, 1)]);
        _player.Silence(1);
        _player.Play(0, [Note(61, 20, 1)]);
        _player.Play(1, [Note(62, 20, 1)]);
        _player.SetTimeline(0, AtSixty with { TimeOrigin = Second(50) });
        _player.Advance(Second(60));

        Assert.Equal([(20, 62)], _port.Sent.Where(m => m.Bytes.Span[0] == 0x90).Select(m => ((int)(m.At.Nanoseconds / 1_000_000_000), (int)m.Bytes.Span[1])));
    }

    [Fact]
    public void Notes_of_two_generations_keep_each_its_own()
    {
        _player.Play(1, [Note(60, 5, 1), Note(62, 7, 1)]);
        _player.Play(2, [Note(61, 6, 1)]);
        _player.Pump(Second(0));
        _player.Silence(2);
        _player.Advance(Second(60));

        Assert.Equal(61, Assert.Single(_port.Sent, m => m.Bytes.Span[0] == 0x90).Bytes.Span[1]);
    }

    [Fact]
    public void Too_many_notes_in_two_bars_are_refused_with_a_report()
    {
        _player.Play(0, [.. Enumerable.Repeat(Note(60, 1, 1), ProtocolConstants.MostQueuedNotes + 1)]);
        _player.Pump(Second(0));

        Assert.Equal("1 notes were refused: 1024 are waiting already, and 1024 is the most.", _reports[^1].Sentence);
        Assert.Equal(PlayerReportKind.NotesRefused, _reports[^1].Kind);
    }

    [Fact]
    public void The_end_is_silent_and_tells_what_could_not_be_finished()
    {
        InProcessPlayer player = new(_clock, _ => new(new FlakyPort { Trouble = "Not written." }, true, ""));
        player.Reported += _reports.Add;
        player.Open(PortChoice.First);
        player.Dispose();

        Assert.Equal("Not written.", _reports[^1].Sentence);
    }
}
