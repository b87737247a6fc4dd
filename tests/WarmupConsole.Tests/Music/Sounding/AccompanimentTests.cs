using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Sounding;

public class AccompanimentTests
{
    [Fact]
    public void The_melody_is_doubled_in_the_octave_when_men_sing_too()
    {
        Rung rung = LadderBuilder.Build(Samples.Exercise("5 4 3"), Samples.Choir(), new()).Rungs[0];

        Assert.Equal([(67, 0), (55, 0), (65, 960), (53, 960), (64, 1920), (52, 1920)], Melody(Samples.Exercise("5 4 3"), rung));
    }

    [Fact]
    public void The_melody_sounds_only_where_somebody_sings()
    {
        Rung rung = Rung("C4", [("Soprano", 0, false), ("Tenor", -1, true)]);

        Assert.Equal([(55, 0)], Melody(Samples.Exercise("5"), rung));
    }

    [Fact]
    public void When_all_rest_the_pattern_sounds_as_written() =>
        Assert.Equal([(67, 0)], Melody(Samples.Exercise("5"), Rung("C4", [("Tenor", -1, false)])));

    [Fact]
    public void Rests_are_silent_and_time_goes_on() =>
        Assert.Equal([(60, 0), (62, 1920)], Melody(Samples.Exercise("1 - 2"), Rung("C4", [("Alto", 0, true)])));

    [Theory]
    [InlineData(Articulation.Legato, 960)]
    [InlineData(Articulation.Glide, 960)]
    [InlineData(Articulation.Marcato, 720)]
    [InlineData(Articulation.Staccato, 480)]
    public void Articulation_shortens_the_melody(Articulation articulation, long ticks)
    {
        Exercise exercise = Samples.Exercise("8 7") with { Articulation = articulation };

        Assert.All(Accompaniment.For(exercise, Rung("C4", [("Alto", 0, true)])).Where(note => note.Midi > 70), note => Assert.Equal(ticks, note.Length.Ticks));
    }

    [Fact]
    public void A_course_of_loudness_is_spread_evenly_up_to_the_last_sounding_note()
    {
        Exercise exercise = Samples.Exercise("8 9 10 9 8 -:4") with { Dynamics = ["p", "f", "p"] };

        Assert.Equal([48, 66, 84, 66, 48], Accompaniment.For(exercise, Rung("C4", [("Alto", 0, true)])).Where(note => note.Midi >= 72).Select(note => note.Velocity));
    }

    [Fact]
    public void Chords_follow_the_roman_numerals_softly_in_the_middle()
    {
        Exercise exercise = Samples.Exercise("8:4") with { Harmony = HarmonyText.Parse("I:2 V7:2").Value! };

        IEnumerable<ScoreNote> chords = Accompaniment.For(exercise, Rung("C4", [("Alto", 0, true)])).Where(note => note.Midi != 72);

        // C3 and C E G above it; then G2 with F B D: every voice goes by step.
        Assert.Equal(
            [(48, 0), (55, 0), (60, 0), (64, 0), (43, 1920), (53, 1920), (59, 1920), (62, 1920)],
            chords.Select(note => (note.Midi, (int)note.Start.Ticks)));
        Assert.All(chords, note => Assert.Equal((52, 1920), (note.Velocity, (int)note.Length.Ticks)));
    }

    [Fact]
    public void Without_numerals_the_tonic_of_the_mode_holds() => Assert.Equal(
        [0, 4, 9],
        Accompaniment.For(Samples.Exercise("8:2", Mode.Minor), Rung("A4", [("Alto", 0, true)], Mode.Minor)).Where(note => note.Midi < 80).Select(note => note.Midi % 12).Distinct().Order());

    [Fact]
    public void A_long_chord_is_struck_again_every_four_beats() => Assert.Equal(
        [(0, 4), (4, 4), (8, 5)],
        Accompaniment.For(Samples.Exercise("1:13"), Rung("C4", [("Alto", 0, true)]), Plain(AccompanimentStyle.Block))
            .Select(note => ((int)note.Start.ToDouble(), (int)note.Length.ToDouble())).Distinct());

    /// <summary>The style, and for I:2 V7:1 in C each note's beat with its place from the bass upwards in its chord.</summary>
    [Theory]
    [InlineData(AccompanimentStyle.CueOnly, "")]
    [InlineData(AccompanimentStyle.Melody, "")]
    [InlineData(AccompanimentStyle.Block, "0:48+55+60+64 2:43+59+62+65")]
    [InlineData(AccompanimentStyle.Broken, "0:48 0.5:55 1:60 1.5:64 2:43+59 2.5:62+65")]
    [InlineData(AccompanimentStyle.BassAndChord, "0:48 1:55+60+64 2:43 2.5:59+62+65")]
    [InlineData(AccompanimentStyle.Drone, "0:36+43+48")]
    public void Each_style_has_its_manner(AccompanimentStyle style, string wanted)
    {
        Exercise exercise = Samples.Exercise("8:2 7:1") with { Harmony = HarmonyText.Parse("I:2 V7:1").Value! };

        IReadOnlyList<ScoreNote> notes = Accompaniment.For(exercise, Rung("C5", [("Alto", 0, true)]), Plain(style));

        Assert.Equal(wanted, string.Join(' ', notes.Where(_ => style != AccompanimentStyle.Melody).GroupBy(note => note.Start).Select(group => $"{group.Key}:{string.Join('+', group.Select(note => note.Midi))}")));
    }

    [Fact]
    public void The_melody_is_played_with_the_chords_only_where_it_is_wanted()
    {
        Rung rung = Rung("C5", [("Alto", 0, true)]);
        Assert.Contains(Accompaniment.For(Samples.Exercise("8"), rung), note => note.Midi == 84);
        Assert.DoesNotContain(Accompaniment.For(Samples.Exercise("8"), rung, Plain(AccompanimentStyle.Block)), note => note.Midi == 84);
        Assert.Equal([84], Accompaniment.For(Samples.Exercise("8"), rung, Plain(AccompanimentStyle.Melody)).Select(note => note.Midi));
    }

    [Fact]
    public void Every_beat_is_tapped_where_that_is_wanted() => Assert.Equal(
        [0, 960, 1920],
        Accompaniment.For(Samples.Exercise("1 2 1:1/2"), Rung("C4", []), Plain(AccompanimentStyle.CueOnly) with { Click = Click.EveryBeat })
            .Where(note => note.Midi == Keyboard.HighestMidi).Select(note => note.Start.Ticks));

    [Fact]
    public void A_chord_tone_ends_where_the_melody_takes_it_over()
    {
        // The melody reaches the fifth of the chord after a beat; the others hold.
        IReadOnlyList<ScoreNote> notes = Accompaniment.For(Samples.Exercise("1 5"), Rung("C3", [("Bass", 0, true)]));

        Assert.Equal([(0, 960, 52), (960, 960, 68)], notes.Where(note => note.Midi == 55).Select(note => ((int)note.Start.Ticks, (int)note.Length.Ticks, note.Velocity)));
        Assert.All(notes.Where(note => note.Midi > 55), note => Assert.Equal(1920, note.Length.Ticks));
    }

    [Fact]
    public void Each_line_sounds_in_the_octave_of_those_who_sing_it()
    {
        Exercise canon = Samples.InParts("1 3 - -", ("men", "1 3", 2));
        Rung rung = LadderBuilder.Build(canon, Samples.Choir(), new()).Rungs[0];

        Assert.Equal([(60, 0), (64, 960), (48, 1920), (52, 2880)], Melody(canon, rung));
    }

    [Fact]
    public void A_line_of_parts_that_all_rest_is_left_out()
    {
        Exercise canon = Samples.InParts("1 3 - -", ("alto", "1 3", 2));

        Assert.Equal([(60, 0), (64, 960)], Melody(canon, Rung("C4", [("Soprano", 0, true), ("Alto", 0, false)])));
    }

    [Fact]
    public void A_held_key_that_another_line_strikes_is_struck_again_and_held_to_its_end()
    {
        Exercise drone = Samples.InParts("1 2 1 -", ("alto", "1:4", 0));

        IEnumerable<ScoreNote> onTonic = Accompaniment.For(drone, Rung("C4", [("Soprano", 0, true), ("Alto", 0, true)])).Where(note => note.Midi == 60);

        Assert.Equal([(0, 1920), (1920, 1920)], onTonic.Select(note => ((int)note.Start.Ticks, (int)note.Length.Ticks)));
    }

    [Fact]
    public void Lines_that_meet_on_a_key_never_strike_it_while_it_sounds() =>
        Gen.Select(
            Gen.OneOf("1 2 1 3 1 -", "1:1/2 5:1/2 1:2 3:3", Samples.FiveNotes),
            Gen.OneOf("1:6", "5 4 3 2 1", "1 8 1 8"),
            Gen.Int[0, 3],
            Gen.Int[-1, 1]).Sample((pattern, voice, offset, placement) =>
            {
                IReadOnlyList<ScoreNote> notes = Accompaniment.For(
                    Samples.InParts(pattern, ("low", voice, offset)), Rung("C4", [("Alto", 0, true), ("Low", placement, true)]));

                Assert.All(notes, note => Assert.True(note.Length > Beats.Zero));
                Assert.All(notes.GroupBy(note => note.Midi), key => Assert.All(
                    key.Zip(key.Skip(1)), pair => Assert.True(pair.First.Start + pair.First.Length <= pair.Second.Start)));
            });

    [Fact]
    public void Breathing_is_silent() => Assert.Empty(Accompaniment.For(Samples.Exercise("1") with { Pattern = null }, Rung("C4", [])));

    [Fact]
    public void A_chord_that_is_none_is_a_fault_of_the_program() => Assert.Throws<ArgumentException>(() =>
        Accompaniment.For(Samples.Exercise("1") with { Harmony = [new("Z", Beats.FromBeats(1))] }, Rung("C4", [])));

    [Fact]
    public void Nothing_leaves_the_piano_and_no_key_is_struck_while_it_sounds() =>
        Gen.Select(
            Gen.Int[0, 127],
            Gen.Enum<Mode>(),
            Gen.OneOf("1 3 5 8 5 3 1", Samples.FiveNotes, "1:1/3 2:1/3 3:1/3 1:2", "5,, 1 21", "8 1 8 1"),
            Gen.OneOf("", "I:1 V7:1 I:2", "viio7:2 bVII:4"),
            Gen.Int[-3, 3]).Sample((midi, mode, pattern, harmony, placement) =>
            {
                Exercise exercise = Samples.Exercise(pattern, mode) with { Harmony = harmony.Length == 0 ? [] : HarmonyText.Parse(harmony).Value! };
                Rung rung = Rung(KeySpelling.TonicFor(midi, mode).ToAscii(), [("Alto", 0, true), ("Low", placement, true)], mode);

                IReadOnlyList<ScoreNote> notes = Accompaniment.For(exercise, rung);

                Assert.All(notes, note => Assert.InRange(note.Midi, Keyboard.LowestMidi, Keyboard.HighestMidi));
                Assert.All(notes, note => Assert.InRange(note.Velocity, 1, 127));
                Assert.Equal(notes.OrderBy(note => note.Start).Select(note => note.Start), notes.Select(note => note.Start));
                Assert.All(notes.GroupBy(note => note.Midi), key => Assert.All(
                    key.Zip(key.Skip(1)), pair => Assert.True(pair.First.Start + pair.First.Length <= pair.Second.Start)));
            });

    [Theory]
    [InlineData("pp", 36)]
    [InlineData("p", 48)]
    [InlineData("mp", 58)]
    [InlineData("mf", 68)]
    [InlineData("f", 84)]
    [InlineData("ff", 100)]
    public void Every_loudness_has_its_velocity(string word, int velocity) => Assert.Equal(velocity, DynamicsData.Velocity(word));

    [Fact]
    public void Loudness_words_are_listed_from_soft_to_loud()
    {
        int[] velocities = [.. DynamicsData.Words.Select(DynamicsData.Velocity)];

        Assert.Equal(velocities.Order().Distinct(), velocities);
        Assert.Contains("write one of pp, p", Assert.Throws<ArgumentException>(() => DynamicsData.Velocity("loud")).Message, StringComparison.Ordinal);
    }

    private static Rung Rung(string tonic, (string Name, int Placement, bool Sings)[] parts, Mode mode = Mode.Major) => new(
        Pitch.Parse(tonic),
        mode,
        [.. parts.Select(part => new RungPart(Samples.Part(part.Name, "C4-G5", "C4-F5", part.Placement), part.Sings, new PitchRange(Pitch.MiddleC, Pitch.MiddleC)))]);

    private static PianoPart Plain(AccompanimentStyle style) => new(style, DoublesMelody: false, BetweenKeys.Dominant, Click.None);

    /// <summary>The notes that are louder than the chords.</summary>
    private static List<(int Midi, int Start)> Melody(Exercise exercise, Rung rung) =>
        [.. Accompaniment.For(exercise, rung).Where(note => note.Velocity == DynamicsData.Velocity("mf")).Select(note => (note.Midi, (int)note.Start.Ticks))];
}
