using WarmupConsole.App.Running;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Tests.App.Running;

/// <summary>At sixty beats a minute a beat is a second.</summary>
public class OwnNotesTests
{
    private readonly OwnNotes _own = new();

    public OwnNotesTests() => _own.SetTimeline(At(60, 0), Second(0));

    [Theory]
    [InlineData(60, 2, true)]
    [InlineData(60, 1.96, true)]
    [InlineData(60, 2.39, true)]
    [InlineData(60, 1.9, false)]
    [InlineData(60, 2.5, false)]
    [InlineData(62, 2, false)]
    public void What_comes_back_about_when_it_was_due_is_an_echo(int midi, double second, bool isEcho)
    {
        _own.Play([Note(60, 2)], Second(0));
        Assert.Equal(isEcho, _own.IsEcho(midi, true, Second(second)));
    }

    [Fact]
    public void A_note_comes_back_once_with_its_end_and_a_key_struck_beside_it_counts()
    {
        _own.Play([Note(60, 2)], Second(0));
        Assert.False(_own.IsEcho(60, false, Second(1)));
        Assert.True(_own.IsEcho(60, true, Second(2.01)));
        Assert.False(_own.IsEcho(60, true, Second(2.02)));
        Assert.True(_own.IsEcho(60, false, Second(3)));
        Assert.False(_own.IsEcho(60, false, Second(3.1)));
    }

    [Fact]
    public void A_new_tempo_moves_what_is_to_come_and_nothing_that_sounds()
    {
        _own.Play([Note(60, 1), Note(62, 3)], Second(0));
        _own.SetTimeline(At(120, 1), Second(1));
        Assert.True(_own.IsEcho(60, true, Second(1.1)));
        Assert.True(_own.IsEcho(62, true, Second(2)));
    }

    [Fact]
    public void After_silence_only_what_had_sounded_still_comes_back()
    {
        _own.Play([Note(60, 1), Note(62, 2)], Second(0));
        _own.Silence(Second(1.1));
        Assert.True(_own.IsEcho(60, true, Second(1.2)));
        Assert.False(_own.IsEcho(62, true, Second(2)));
    }

    [Fact]
    public void A_note_that_is_handed_over_late_is_due_at_once()
    {
        _own.Play([Note(60, 1)], Second(5));
        Assert.True(_own.IsEcho(60, true, Second(5.1)));
    }

    private static ScoreNote Note(int midi, int beat) => new(midi, Beats.FromBeats(beat), Beats.FromBeats(1), 60);

    private static Timeline At(int beatsPerMinute, int beat) => new(Tempo.FromBeatsPerMinute(beatsPerMinute), Beats.FromBeats(beat), Second(beat));

    private static Moment Second(double second) => new((long)(second * 1_000_000_000));
}
