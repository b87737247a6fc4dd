using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Music.Rhythm;

public class TempoTests
{
    // Standard MIDI File tempo, FF 51 03: round(60,000,000 / bpm), here as the three bytes.
    [Theory]
    [InlineData(60, 0x0F4240)]
    [InlineData(72, 0x0CB735)]
    [InlineData(88, 0x0A675A)]
    [InlineData(96, 0x098968)]
    [InlineData(100, 0x0927C0)]
    [InlineData(108, 0x087A24)]
    [InlineData(120, 0x07A120)]
    public void Microseconds_of_a_beat_are_those_of_a_midi_file(int beatsPerMinute, int microseconds) =>
        Assert.Equal(microseconds, Tempo.FromBeatsPerMinute(beatsPerMinute).MicrosecondsPerBeat);

    [Theory]
    [InlineData(19)]
    [InlineData(301)]
    public void Tempos_that_no_warm_up_has_are_refused(int beatsPerMinute) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Tempo.FromBeatsPerMinute(beatsPerMinute));

    [Fact]
    public void Faster_at_the_end_of_the_scale_stays_there()
    {
        Assert.Equal(Tempo.FromBeatsPerMinute(300), Tempo.Clamp(310_000));
        Assert.Equal(Tempo.FromBeatsPerMinute(20), Tempo.Clamp(0));
    }

    [Fact]
    public void Tempos_compare_and_are_shown_in_beats_a_minute()
    {
        Assert.True(Tempo.FromBeatsPerMinute(60) < Tempo.FromBeatsPerMinute(61));
        Assert.True(Tempo.FromBeatsPerMinute(60) >= Tempo.FromMilliBeatsPerMinute(60_000));
        Assert.Equal("88.5 bpm", Tempo.FromMilliBeatsPerMinute(88_500).ToString());
        Assert.Equal(TimeSpan.FromSeconds(1.5), Tempo.FromBeatsPerMinute(120).DurationOf(Beats.FromBeats(3)));
    }
}
