using WarmupConsole.Midi.Playing;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Tests.Support;
using static WarmupConsole.Tests.Midi.Playing.EngineBench;

namespace WarmupConsole.Tests.Midi.Playing;

public class PlayerEngineTests
{
    private readonly EngineBench _bench = new();

    [Fact]
    public void The_first_message_to_a_port_chooses_the_grand_piano() =>
        Assert.Equal("C0 00", Hex.Of(Assert.Single(_bench.Sent).Bytes.Span));

    [Fact]
    public void A_note_begins_and_ends_at_its_beats()
    {
        _bench.Play(0, Note(60, 1, 0.5));
        Assert.Equal(Second(1), _bench.Engine.NextDue);
        _bench.RunTo(3);

        Assert.Equal(["1 90 3C 40", "1.5 80 3C 40"], _bench.Log);
        Assert.Null(_bench.Engine.NextDue);
    }

    [Fact]
    public void At_one_tick_ends_go_before_beginnings()
    {
        _bench.Play(0, Note(62, 1, 1), Note(60, 0, 1));
        _bench.RunTo(3);

        Assert.Equal(["0 90 3C 40", "1 80 3C 40", "1 90 3E 40", "2 80 3E 40"], _bench.Log);
    }

    [Fact]
    public void A_pitch_struck_again_is_released_first_and_ends_with_its_last_note()
    {
        _bench.Play(0, Note(60, 0, 2), Note(60, 1, 3));
        _bench.RunTo(5);

        Assert.Equal(["0 90 3C 40", "1 80 3C 40", "1 90 3C 40", "4 80 3C 40"], _bench.Log);
    }

    [Fact]
    public void A_new_timeline_moves_what_waits_and_the_end_of_what_sounds()
    {
        _bench.Play(0, Note(60, 0, 4), Note(62, 4, 1));
        _bench.RunTo(2);
        _bench.Handle(new Frame.SetTimeline(0, AtSixty.WithTempo(Tempo.FromBeatsPerMinute(120), _bench.Now)));
        _bench.RunTo(9);

        Assert.Equal(["0 90 3C 40", "3 80 3C 40", "3 90 3E 40", "3.5 80 3E 40"], _bench.Log);
    }

    [Fact]
    public void Without_a_timeline_notes_wait()
    {
        PlayerEngine engine = new(_ => new(new NullPort(), true, ""));
        engine.Handle(new Frame.Notes(0, [Note(60, 0, 1)]), default);
        Assert.Null(engine.NextDue);

        engine.Handle(new Frame.SetTimeline(0, AtSixty), default);
        Assert.Equal(Second(0), engine.NextDue);
    }

    [Fact]
    public void Silence_ends_each_sounding_pitch_once_then_panics_in_order()
    {
        _bench.Play(0, Note(64, 0, 9), Note(60, 0, 9), Note(64, 0, 5), Note(67, 2, 1));
        _bench.RunTo(1);
        Frame? report = _bench.Handle(new Frame.Silence(1));
        _bench.RunTo(20);

        Assert.Equal(new Frame.Silenced(1, Second(1)), report);
        Assert.Equal(
            ["0 90 40 40", "0 90 3C 40", "0 80 40 40", "0 90 40 40", "1 80 3C 40", "1 80 40 40", "1 B0 40 00", "1 B0 7B 00", "1 B0 78 00"],
            _bench.Log);
    }

    [Fact]
    public void What_is_older_than_the_last_silence_is_passed_over_and_what_is_as_new_is_played()
    {
        _bench.Play(2, Note(72, 3, 1));
        _bench.Handle(new Frame.Silence(2));

        Assert.Null(_bench.Play(1, Note(60, 1, 1)));
        Assert.Null(_bench.Handle(new Frame.SetTimeline(1, AtSixty with { TimeOrigin = Second(100) })));
        _bench.Play(2, Note(74, 2, 1));
        _bench.RunTo(9);

        Assert.Equal(["2 90 4A 40", "3 80 4A 40", "3 90 48 40", "4 80 48 40"], _bench.Log[3..]);
    }

    [Fact]
    public void An_older_silence_silences_but_does_not_bring_old_generations_back()
    {
        _bench.Handle(new Frame.Silence(5));
        _bench.Play(5, Note(60, 0, 9));
        _bench.RunTo(1);
        _bench.Handle(new Frame.Silence(3));
        _bench.Play(4, Note(62, 2, 1));
        _bench.RunTo(9);

        Assert.Equal(["0 90 3C 40", "1 80 3C 40"], _bench.Log[3..5]);
        Assert.DoesNotContain(_bench.Log, line => line.Contains("90 3E", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(1.1, 1, true)] // 100 ms is allowed
    [InlineData(1.2, 1, true)] // later, but most is still to come
    [InlineData(1.2, 0.25, false)]
    [InlineData(1.09, 0.05, true)]
    [InlineData(1.51, 1, false)]
    public void A_late_note_is_played_while_it_is_worth_it(double wakesAt, double length, bool played)
    {
        _bench.Play(0, Note(60, 1, length));
        _bench.WakeLateAt(wakesAt);
        _bench.RunTo(9);

        Assert.Equal(played ? 2 : 0, _bench.Log.Length);
        Assert.Equal((played ? 1 : 0, played ? 0 : 1), (_bench.Engine.Onsets.Played, _bench.Engine.Onsets.Dropped));
    }

    [Fact]
    public void Onset_errors_are_times_after_the_due_times()
    {
        _bench.Play(0, Note(60, 0, 0.5), Note(62, 1, 0.5), Note(64, 2, 0.5));
        _bench.RunTo(0.7);
        _bench.WakeLateAt(1.03);
        _bench.RunTo(1.9);
        _bench.WakeLateAt(2.01);

        Assert.Equal(new OnsetFigures(3, 0, 10_000_000, 30_000_000, 30_000_000), _bench.Engine.Onsets);
    }

    [Fact]
    public void More_notes_than_fit_are_refused_as_a_whole_with_the_reason()
    {
        for (int frame = 0; frame < 4; frame++)
        {
            Assert.Null(_bench.Play(0, [.. Enumerable.Repeat(Note(60, 1, 1), 255)]));
        }

        Assert.Equal(new Frame.Refused("5 notes were refused: 1020 are waiting already, and 1024 is the most."), _bench.Play(0, [.. Enumerable.Repeat(Note(61, 1, 1), 5)]));
        Assert.Null(_bench.Play(0, [.. Enumerable.Repeat(Note(61, 1, 1), 4)]));
    }

    [Fact]
    public void No_more_than_256_notes_sound_at_once()
    {
        _bench.Play(0, [.. Enumerable.Range(0, 300).Select(i => Note(i % 128, 1, 1))]);
        _bench.RunTo(5);

        Assert.Equal((256, 44), (_bench.Engine.Onsets.Played, _bench.Engine.Onsets.Dropped));
    }

    [Fact]
    public void Changing_the_port_silences_the_old_one_first()
    {
        _bench.Play(0, Note(60, 0, 9));
        _bench.RunTo(1);
        Frame? report = _bench.Handle(new Frame.OpenPort(PortChoice.First));

        Assert.Equal(new Frame.PortOpened("open"), report);
        Assert.Equal(["1 80 3C 40", "1 B0 40 00", "1 B0 7B 00", "1 B0 78 00", "1 C0 00"], _bench.Log[1..]);
    }

    [Fact]
    public void A_port_that_fails_while_playing_is_reported_once_and_closed()
    {
        FlakyPort port = new();
        PlayerEngine engine = new(_ => new(port, true, ""));
        engine.Handle(new Frame.OpenPort(PortChoice.First), default);
        engine.Handle(new Frame.SetTimeline(0, AtSixty), default);
        engine.Handle(new Frame.Notes(0, [Note(60, 0, 1), Note(62, 1, 1)]), default);
        port.Works = false;

        Assert.Equal(new Frame.PortLost("The port flaky was lost: check cable and power. The music waits; the port is opened again as soon as it is there."), engine.RunDue(Second(0)));
        Assert.Null(engine.RunDue(Second(1)));
        Assert.Equal(1, port.TimesClosed);
    }

    [Fact]
    public void A_port_that_cannot_be_opened_is_reported_and_the_rest_goes_on()
    {
        PlayerEngine engine = new(_ => new(new NullPort(), false, "No."));
        Assert.Equal(new Frame.PortFailed("No."), engine.Handle(new Frame.OpenPort(PortChoice.Named("x")), default));
        Assert.IsType<Frame.Silenced>(engine.Handle(new Frame.Silence(1), default));
    }

    [Fact]
    public void Trouble_in_closing_the_old_port_is_told_with_the_new_one()
    {
        PlayerEngine engine = new(_ => new(new FlakyPort { Trouble = "Not written." }, true, "Open."));
        Assert.Equal(new Frame.PortOpened("Open."), engine.Handle(new Frame.OpenPort(PortChoice.First), default));
        Assert.Equal(new Frame.PortFailed("Not written. Open."), engine.Handle(new Frame.OpenPort(PortChoice.First), default));
        Assert.Equal("Not written.", engine.End());
        Assert.Null(engine.End());
    }

    [Fact]
    public void Playing_allocates_nothing()
    {
        PlayerEngine engine = new(_ => new(new NullPort(), true, ""));
        engine.Handle(new Frame.SetTimeline(0, AtSixty), default);
        Frame[] bars = [.. Enumerable.Range(0, 7).Select(bar => new Frame.Notes(0, [.. Enumerable.Range(0, 200).Select(i => Note(40 + (i % 40), (bar * 4) + (i / 50.0), 0.5))]))];
        PlayBar(engine, bars[0], 4);
        int bar = 0;
        Assert.Equal(0, Allocated.Least(() =>
        {
            Frame next = bars[++bar];
            return () => PlayBar(engine, next, 4 * (bar + 1));
        }));
    }

    private static void PlayBar(PlayerEngine engine, Frame bar, double until)
    {
        engine.Handle(bar, default);
        while (engine.NextDue is { } due && due <= Second(until))
        {
            engine.RunDue(due);
        }
    }
}
