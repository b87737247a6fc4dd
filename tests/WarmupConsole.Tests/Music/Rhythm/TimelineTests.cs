using CsCheck;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Music.Rhythm;

public class TimelineTests
{
    private static readonly Gen<Tempo> AnyTempo = Gen.Int[20_000, 300_000].Select(Tempo.FromMilliBeatsPerMinute);

    private static readonly Gen<Timeline> AnyTimeline = Gen.Select(
        AnyTempo, Gen.Long[-1_000_000, 1_000_000], Gen.Long[0, 1L << 60], (tempo, beat, time) => new Timeline(tempo, new(beat), new(time)));

    private static readonly Gen<Beats> AnyBeat = Gen.Long[-10_000_000, 10_000_000].Select(ticks => new Beats(ticks));

    [Fact]
    public void A_beat_comes_back_from_its_time_also_before_the_start() => Gen.Select(AnyTimeline, AnyBeat).Sample((timeline, beat) =>
        Assert.Equal(beat, timeline.BeatAt(timeline.TimeAt(beat))));

    [Fact]
    public void A_nanosecond_before_its_time_a_beat_has_not_come() => Gen.Select(AnyTimeline, AnyBeat).Sample((timeline, beat) =>
        Assert.True(timeline.BeatAt(new(timeline.TimeAt(beat).Nanoseconds - 1)) < beat));

    [Fact]
    public void Later_beats_come_later() => Gen.Select(AnyTimeline, AnyBeat, Gen.Long[1, 10_000]).Sample((timeline, beat, ticks) =>
        Assert.True(timeline.TimeAt(beat) < timeline.TimeAt(beat + new Beats(ticks))));

    [Fact]
    public void A_change_of_tempo_does_not_move_the_present_beat() => Gen.Select(AnyTimeline, AnyTempo, AnyBeat).Sample((timeline, tempo, beat) =>
    {
        Moment now = timeline.TimeAt(beat);
        Timeline changed = timeline.WithTempo(tempo, now);
        Assert.Equal(beat, changed.BeatAt(now));
        Assert.Equal(now, changed.TimeAt(beat));
    });

    [Fact]
    public void Many_changes_of_tempo_do_not_drift()
    {
        Timeline timeline = new(Tempo.FromBeatsPerMinute(60), Beats.Zero, new(0));
        for (int change = 0; change < 1000; change++)
        {
            Moment now = timeline.TimeAt(Beats.FromBeats(change));
            timeline = timeline.WithTempo(Tempo.FromBeatsPerMinute(change % 2 == 0 ? 120 : 60), now);
        }

        // 500 beats of half a second and 499 of a whole one; each anchor rounds up by less than a nanosecond.
        Assert.InRange(timeline.TimeAt(Beats.FromBeats(999)).Nanoseconds, 749_000_000_000, 749_000_001_000);
    }

    [Fact]
    public void At_60_a_beat_is_a_second_and_a_count_in_lies_before()
    {
        Timeline timeline = new(Tempo.FromBeatsPerMinute(60), Beats.Zero, new(5_000_000_000));

        Assert.Equal(new Moment(6_000_000_000), timeline.TimeAt(Beats.FromBeats(1)));
        Assert.Equal(new Moment(3_000_000_000), timeline.TimeAt(Beats.FromBeats(-2)));
        Assert.Equal(Beats.FromBeats(-2), timeline.BeatAt(new(3_000_000_000)));
        Assert.Equal(new Beats(-1), timeline.BeatAt(new(4_999_999_999)));
    }
}
