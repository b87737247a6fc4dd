using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Drills;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Repertoire;

public sealed class DrillTests
{
    private static readonly Part Alto = Voice("alto", 0, "G3-D5", "G3-C5");
    private static readonly Part Tenor = Voice("tenor", -1, "C3-A4", "C3-F4");

    [Fact]
    public void Degrees_stand_in_the_local_key_with_chromatic_signs()
    {
        Drill drill = Made("D4 F#4 G#4 Bb4 C#5", new(0, 2, false));
        Assert.Equal("1 3 #4 b6 7", PatternText.Write(drill.Pattern));
        Assert.Equal((Mode.Major, "D4"), (drill.Mode, drill.Tonic.ToString()));
    }

    [Fact]
    public void Minor_has_its_own_degrees() => Assert.Equal("1 3 5 6 #7 8", PatternText.Write(Made("A3 C4 E4 F4 G#4 A4", new(0, 0, true)).Pattern));

    [Fact]
    public void Without_a_key_signature_it_is_read_in_C() => Assert.Equal("1 b3 5", PatternText.Write(Made("C4 Eb4 G4", null).Pattern));

    [Theory]
    [InlineData(-7, "Cb4 Db4 Eb4")]
    [InlineData(7, "C#4 D#4 E#4")]
    [InlineData(-1, "F4 G4 A4")]
    public void Every_key_signature_has_its_tonic(int fifths, string line) => Assert.Equal("1 2 3", PatternText.Write(Made(line, new(0, fifths, false)).Pattern));

    [Fact]
    public void The_last_key_sounds_as_the_score_at_its_tempo_and_the_first_is_lower_and_slower()
    {
        (Drill drill, Part part) = (Made("C4 E4 G4 A4", null), Alto);
        KeyLadder ladder = Ladder(drill, part);
        Assert.Equal(4, ladder.Rungs.Count);
        Assert.Equal([60, 64, 67, 69], Sung(drill, ladder.Rungs[^1], part));
        Assert.Equal([57, 61, 64, 66], Sung(drill, ladder.Rungs[0], part));
        Assert.Equal((Tempo.FromBeatsPerMinute(45), Tempo.FromBeatsPerMinute(60)), (drill.Slow, drill.Tempo));
        Assert.True(drill.Arrives);
    }

    [Fact]
    public void Men_arrive_at_their_own_octave()
    {
        Drill drill = Made("C3 E3 G3 F4", null, Tenor);
        Assert.Equal([48, 52, 55, 65], Sung(drill, Ladder(drill, Tenor).Rungs[^1], Tenor));
    }

    [Fact]
    public void High_bars_get_no_more_reach_than_they_need()
    {
        Assert.Equal(0, Made("C4 C5", null).Keys.ReachPercent);
        Assert.Equal(50, Made("E4 C#5", null).Keys.ReachPercent);
        Assert.Equal(100, Made("E4 D5", null).Keys.ReachPercent);
    }

    [Fact]
    public void Low_bars_begin_higher_and_come_down()
    {
        Drill drill = Made("G3 C4 E4", null, Voice("alto", 0, "G3-D5", "A3-C5"));
        Assert.Equal(LadderShape.Down, drill.Keys.Shape);
        Assert.Equal([55, 60, 64], Sung(drill, Ladder(drill, Voice("alto", 0, "G3-D5", "A3-C5")).Rungs[^1], Alto));
    }

    [Fact]
    public void Where_the_part_cannot_sing_it_at_all_the_ladder_ends_before()
    {
        Drill drill = Made("C5 E5", null);
        Assert.False(drill.Arrives);
        Assert.Equal(74, Sung(drill, Ladder(drill, Alto).Rungs[^1], Alto).Max());
        Assert.Equal(DrillRefusal.BeyondThePart, Make("C3 C5 C6", null, Alto).Refusal);
    }

    [Fact]
    public void Rests_and_ties_are_kept_and_a_simple_rhythm_has_neither()
    {
        Assert.Equal("1:3/2 -:1/2 2:1/3 3:5/3", PatternText.Write(Made("C4:3/2 -:1/2 D4:1/3 E4:5/3", null).Pattern));
        Assert.Equal("1 2 3:2", PatternText.Write(Make("C4:3/2 -:1/2 D4:1/3 E4:5/3", null, Alto, simple: true).Drill!.Pattern));
        Assert.Equal("1 - 2:2", PatternText.Write(Make("C4 -:3 D4", null, Alto, simple: true).Drill!.Pattern));
    }

    [Fact]
    public void Syllables_are_those_of_the_score_and_melismas_carry_on()
    {
        string[] words = ["Ky-", "", "ri e", "~"];
        int next = 0;
        Drill drill = Make("C4 D4 E4 F4", null, Alto, change: note => note with { Lyric = words[next++] }).Drill!;
        Assert.Equal("Ky- ~ ri‿e ~", SyllableText.Write(drill.Pattern));
        Assert.True(SyllableText.Apply(drill.Pattern, SyllableText.Write(drill.Pattern)).Ok);
    }

    [Fact]
    public void A_bar_without_notes_is_refused() => Assert.Equal(DrillRefusal.NothingSung, Make("C4 -:3 -:4", null, Alto, bars: (1, 1)).Refusal);

    [Fact]
    public void Of_divided_notes_the_upper_is_sung() => Assert.Equal("1 3", PatternText.Write(Made("C4 C4+E4", null).Pattern));

    private static Drill Made(string line, KeyChange? key, Part? part = null) => Make(line, key, part ?? Alto).Drill!;

    private static (Drill? Drill, DrillRefusal? Refusal) Make(string line, KeyChange? key, Part part, bool simple = false, Func<PartNote, PartNote>? change = null, (int From, int To)? bars = null)
    {
        ScorePart sung = Scored.Part("P1", part.Name, "G2", Scored.Line(line, change)) with { Keys = key is null ? [] : [key] };
        Score score = Scored.Of(sung with { BarNumbers = ["1", "2", "3"] });
        ScoreLook look = ScoreLook.Of(score, ScoreMap.Guess(score, [part]), LookQuestion.Plain);
        (int from, int to) = bars ?? (0, 2);
        return DrillMaker.Make(score, new(look.Lines[0], from, to, simple, null, [part]), look.Clock);
    }

    private static KeyLadder Ladder(Drill drill, Part part) => LadderBuilder.Build(
        new() { Id = "d", Title = "D", Stage = Stage.Sung, Tempo = new(drill.Slow, drill.Slow, drill.Tempo), Pattern = drill.Pattern, Mode = drill.Mode }, [part], drill.Keys);

    private static int[] Sung(Drill drill, Rung rung, Part part) =>
        [.. drill.Pattern.Notes.Where(note => note.Degree is not null).Select(note => rung.Tonic.Octaves(part.PlacementOctaves).Transpose(ModeData.IntervalOf(drill.Mode, note.Degree!.Value)).Midi)];

    private static Part Voice(string id, int placement, string extreme, string comfortable) =>
        new(id, char.ToUpperInvariant(id[0]) + id[1..], [], [], 10, placement, new(Range(extreme), Range(comfortable)));

    private static PitchRange Range(string text) => new(Pitch.Parse(text.Split('-')[0]), Pitch.Parse(text.Split('-')[1]));
}
