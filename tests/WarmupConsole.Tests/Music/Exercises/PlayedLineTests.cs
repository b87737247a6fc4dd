using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Tests.Music.Exercises;

public sealed class PlayedLineTests
{
    /// <summary>Keys in milliseconds: pressed, let go.</summary>
    private static PlayedNote Key(int midi, int from, int to) => new(midi, new Moment(from * 1_000_000L), new Moment(to * 1_000_000L));

    private static string Line(PlayedLine line) => $"{PatternText.Write(line.Pattern)} at {line.Tempo}";

    [Fact]
    public void Even_notes_are_beats_and_the_last_one_lasts_as_long_as_it_was_held() => Assert.Equal(
        "1 2 3:2 at 80 bpm",
        Line(PlayedLine.Of([Key(60, 0, 700), Key(62, 750, 1480), Key(64, 1500, 3000)], 60, Mode.Major)));

    [Fact]
    public void Quick_notes_are_halves_of_a_beat_that_one_could_lead() => Assert.Equal(
        "1:1/2 2:1/2 3:1/2 4:1/2 5:1/2 at 120 bpm",
        Line(PlayedLine.Of([.. new[] { 60, 62, 64, 65, 67 }.Index().Select(key => Key(key.Item, key.Index * 250, (key.Index * 250) + 240))], 60, Mode.Major)));

    [Fact]
    public void Slow_notes_are_two_beats_each() =>
        Assert.Equal("5:2 1:2 at 60 bpm", Line(PlayedLine.Of([Key(67, 0, 1990), Key(60, 2000, 4000)], 60, Mode.Major)));

    [Fact]
    public void A_key_up_for_half_a_beat_or_more_is_a_rest_and_less_is_how_it_was_played() => Assert.Equal(
        "1:1/2 -:1/2 1:1/2 -:1/2 3 1 at 60 bpm",
        Line(PlayedLine.Of([Key(60, 0, 500), Key(60, 1000, 1480), Key(64, 2000, 2700), Key(60, 3000, 4000)], 60, Mode.Major)));

    [Fact]
    public void Unsteady_playing_becomes_even() => Assert.Equal(
        "1 2 3 2 1 at 59 bpm",
        Line(PlayedLine.Of([Key(60, 0, 950), Key(62, 1060, 1900), Key(64, 1970, 2900), Key(62, 2980, 3900), Key(60, 4000, 5050)], 60, Mode.Major)));

    [Fact]
    public void Of_keys_struck_together_the_highest_counts() =>
        Assert.Equal("5 4 at 60 bpm", Line(PlayedLine.Of([Key(60, 0, 900), Key(67, 20, 990), Key(65, 1000, 2000)], 60, Mode.Major)));

    [Fact]
    public void A_single_note_is_a_line_too() => Assert.Equal("1 at 100 bpm", Line(PlayedLine.Of([Key(60, 0, 600)], 60, Mode.Major)));

    [Fact]
    public void Nothing_played_is_no_line() => Assert.Throws<ArgumentException>(() => PlayedLine.Of([], 60, Mode.Major));

    [Theory]
    [InlineData(Mode.Major, "1 b2 2 b3 3 4 #4 5 b6 6 b7 7 8")]
    [InlineData(Mode.Minor, "1 b2 2 3 #3 4 #4 5 6 #6 7 #7 8")]
    [InlineData(Mode.Lydian, "1 b2 2 b3 3 b4 4 5 b6 6 b7 7 8")]
    [InlineData(Mode.Phrygian, "1 2 #2 3 #3 4 #4 5 6 #6 7 #7 8")]
    public void Keys_between_those_of_the_scale_are_altered_degrees(Mode mode, string degrees) =>
        Assert.Equal(degrees, string.Join(' ', Enumerable.Range(0, 13).Select(semitones => DegreeText.Write(PlayedLine.DegreeOf(semitones, mode)))));

    [Fact]
    public void Every_degree_sounds_as_it_was_played() => Gen.Select(Gen.Int[-36, 36], Gen.Enum<Mode>())
        .Sample((semitones, mode) => ModeData.IntervalOf(mode, PlayedLine.DegreeOf(semitones, mode)).Semitones == semitones);

    [Fact]
    public void A_pattern_that_is_played_exactly_comes_back() =>
        Gen.Select(Gen.Int[-12, 12].Array[2, 12], Gen.Int[60, 120]).Sample((degrees, tempo) =>
        {
            double beat = 60_000.0 / tempo;
            PlayedNote[] keys = [.. degrees.Select((semitones, at) => Key(60 + semitones, (int)(at * beat), (int)((at + 1) * beat) - 1))];
            Pattern heard = PlayedLine.Of(keys, 60, Mode.Major).Pattern;
            Assert.All(heard.Notes, note => Assert.Equal(Beats.FromBeats(1), note.Length));
            Assert.Equal(degrees, heard.Notes.Select(note => ModeData.IntervalOf(Mode.Major, note.Degree!.Value).Semitones));
        });
}
