using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Tests.Music.Sounding;

public class CueChordsTests
{
    private static readonly Beats Two = Beats.FromBeats(2);

    [Fact]
    public void The_tonic_chord_of_middle_c_lies_in_the_middle_with_the_first_note_on_top() =>
        Assert.Equal([36, 48, 52, 55, 60], Midi(CueChords.Tonic(Rung("C4"), Samples.Exercise("1 2 3"), Two)));

    [Fact]
    public void A_pattern_that_starts_on_the_fifth_has_it_on_top() =>
        Assert.Equal([36, 48, 55, 60, 64, 67], Midi(CueChords.Tonic(Rung("C4"), Samples.Exercise("5 4 3 2 1"), Two)));

    [Fact]
    public void The_first_note_lies_where_women_and_men_sing_it()
    {
        Rung rung = LadderBuilder.Build(Samples.Exercise("5 4 3 2 1"), Samples.Choir(), new()).Rungs[0];
        IReadOnlyList<ScoreNote> chord = CueChords.Tonic(rung, Samples.Exercise("5 4 3 2 1"), Two);

        Assert.Equal(rung.Tonic.Midi + 7, chord[^1].Midi);
        Assert.Contains(rung.Tonic.Midi - 5, Midi(chord));
    }

    [Fact]
    public void Where_men_sing_alone_their_note_is_the_lower_one()
    {
        Rung rung = Rung("C4") with { Parts = [new(Samples.Part("Soprano", "C4-G5", "C4-F5", 0), false, Samples.Range("C4-G4")), new(Samples.Part("Bass", "F2-C4", "G2-C4", -1), true, Samples.Range("C3-G3"))] };

        Assert.Equal([36, 48, 52, 55, 60], Midi(CueChords.Tonic(rung, Samples.Exercise("1 2"), Two)));
    }

    [Fact]
    public void The_tonic_alone_may_lead()
    {
        PianoPart piano = PianoPart.Usual with { Between = BetweenKeys.Tonic };

        Assert.Equal(CueChords.Tonic(Rung("Db4"), Samples.Exercise("1"), Two), CueChords.ToNextKey((Rung("C4"), Rung("Db4")), Samples.Exercise("1"), Two, piano));
    }

    [Fact]
    public void Chromatic_every_voice_moves_from_the_old_tonic_to_the_new()
    {
        PianoPart piano = PianoPart.Usual with { Between = BetweenKeys.Chromatic };
        ILookup<long, ScoreNote> halves = CueChords.ToNextKey((Rung("C4"), Rung("Db4")), Samples.Exercise("1"), Two, piano).ToLookup(note => note.Start.Ticks);

        Assert.Equal([0, 4, 7], Classes(halves[0]));
        Assert.Equal(Midi(halves[0]).Select(midi => midi + 1), Midi(halves[960]));
        Assert.Equal(Midi(CueChords.Tonic(Rung("Db4"), Samples.Exercise("1"), Two)), Midi(halves[960]));
    }

    [Fact]
    public void Alone_the_choir_is_given_the_whole_of_a_short_breath_to_take_the_key_from()
    {
        PianoPart alone = PianoPart.Usual with { Style = AccompanimentStyle.CueOnly };
        Beats one = Beats.FromBeats(1);

        Assert.Equal(CueChords.Tonic(Rung("Db4"), Samples.Exercise("1"), one), CueChords.ToNextKey((Rung("C4"), Rung("Db4")), Samples.Exercise("1"), one, alone));
        Assert.Equal([0, 960], CueChords.ToNextKey((Rung("C4"), Rung("Db4")), Samples.Exercise("1"), Two, alone).Select(note => note.Start.Ticks).Distinct());
    }

    [Fact]
    public void The_first_note_is_on_top_also_when_the_chord_does_not_have_it()
    {
        IReadOnlyList<ScoreNote> chord = CueChords.Tonic(Rung("C4"), Samples.Exercise("-:1 2 1"), Two);

        Assert.Equal(62, chord[^1].Midi);
        Assert.Equal([0, 2, 4, 7], Classes(chord));
    }

    [Fact]
    public void In_minor_the_third_is_minor() =>
        Assert.Equal([2, 5, 9], Classes(CueChords.Tonic(Rung("D4", Mode.Dorian), Samples.Exercise("1 2", Mode.Dorian), Two)));

    [Fact]
    public void The_top_is_the_loudest() => Assert.All(
        CueChords.Tonic(Rung("E4"), Samples.Exercise("3 1"), Two).SkipLast(1),
        note => Assert.True(note.Velocity < CueChords.Tonic(Rung("E4"), Samples.Exercise("3 1"), Two)[^1].Velocity));

    /// <summary>The loudness words of an exercise, and how loud the top and the rest of its cue chords are.</summary>
    [Theory]
    [InlineData("pp", 38, 26)]
    [InlineData("p mf p", 50, 38)]
    [InlineData("mf", 70, 58)]
    [InlineData("ff p", 102, 90)]
    public void The_cue_is_as_loud_as_the_exercise_begins(string dynamics, int top, int others)
    {
        Exercise exercise = Samples.Exercise("5 1") with { Dynamics = dynamics.Split(' ') };
        IReadOnlyList<ScoreNote> tonic = CueChords.Tonic(Rung("E4"), exercise, Two);
        IReadOnlyList<ScoreNote> toNext = CueChords.ToNextKey(Rung("E4"), Rung("F4"), exercise, Two);
        Assert.Equal(top, tonic[^1].Velocity);
        Assert.All(tonic.SkipLast(1), note => Assert.Equal(others, note.Velocity));
        Assert.Equal([others, top], toNext.Select(note => note.Velocity).Distinct().Order());
    }

    [Fact]
    public void To_the_next_key_lead_its_dominant_seventh_and_its_tonic_within_the_breath()
    {
        IReadOnlyList<ScoreNote> cue = CueChords.ToNextKey(Rung("C4"), Rung("Db4"), Samples.Exercise("1 2"), Two);
        ILookup<long, ScoreNote> halves = cue.ToLookup(note => note.Start.Ticks);

        Assert.Equal([0, 960], halves.Select(half => half.Key));
        Assert.All(cue, note => Assert.Equal(Beats.FromBeats(1), note.Length));

        // A♭ C E♭ G♭, then D♭ F A♭.
        Assert.Equal([0, 3, 6, 8], Classes(halves[0]));
        Assert.Equal([1, 5, 8], Classes(halves[960]));
        Assert.Equal(8, halves[0].Min(note => note.Midi) % 12);
    }

    [Fact]
    public void The_same_key_again_needs_no_dominant() => Assert.Equal(
        CueChords.Tonic(Rung("C4"), Samples.Exercise("1"), Two),
        CueChords.ToNextKey(Rung("C4"), Rung("C4"), Samples.Exercise("1"), Two));

    [Fact]
    public void In_every_key_and_mode_the_cue_spells_its_chords_and_fills_the_breath() =>
        Gen.Select(Gen.Int[30, 90], Gen.Enum<Mode>(), Gen.Int[1, 8], Gen.OneOf("1", "3 1", "5 1", "7, 1", "2 1", "8 1")).Sample((midi, mode, breath, pattern) =>
        {
            Rung next = new(KeySpelling.TonicFor(midi, mode), mode, []);
            Exercise exercise = Samples.Exercise(pattern, mode);
            IReadOnlyList<ScoreNote> cue = CueChords.ToNextKey(Rung("C-1"), next, exercise, Beats.FromBeats(breath));
            Key key = Key.Of(next.Tonic, mode);

            Assert.Equal(Sorted(key.DominantSeventh(4)), Classes(cue.Where(note => note.Start == Beats.Zero)));
            Assert.Superset(Sorted([key.PitchOf(new(1, 0, 0), 4), key.PitchOf(new(3, 0, 0), 4), key.PitchOf(new(5, 0, 0), 4)]).ToHashSet(), Classes(cue.Where(note => note.Start > Beats.Zero)).ToHashSet());
            Assert.All(cue, note => Assert.InRange(note.Midi, 36, 81));
            Assert.Equal(Beats.FromBeats(breath), cue.Max(note => note.Start + note.Length));
        });

    [Fact]
    public void Whatever_leads_the_tonic_ends_it_with_the_starting_note_on_top_and_an_octave_below() =>
        Gen.Select(Gen.Int[40, 80], Gen.Int[-3, 3], Gen.Enum<Mode>(), Gen.Int[1, 8], Gen.OneOf("1", "3 1", "5 1", "2 1", "8 1"), Gen.Enum<BetweenKeys>(), Gen.Enum<AccompanimentStyle>())
            .Sample((midi, by, mode, breath, pattern, between, style) =>
            {
                Rung next = new(KeySpelling.TonicFor(midi, mode), mode, []);
                Rung before = new(KeySpelling.TonicFor(midi - by, mode), mode, []);
                PianoPart piano = new(style, true, between, Click.None);
                IReadOnlyList<ScoreNote> cue = CueChords.ToNextKey((before, next), Samples.Exercise(pattern, mode), Beats.FromBeats(breath), piano);
                ScoreNote[] last = [.. cue.Where(note => note.Start == cue.Max(other => other.Start))];
                int start = Samples.Exercise(pattern, mode).Pattern!.Notes[0].Degree!.Value is var degree ? midi + ModeData.IntervalOf(mode, degree).Semitones : 0;

                Assert.Equal((start % 12, last.Max(note => note.Midi)), (last[^1].Midi % 12, last[^1].Midi));
                Assert.Contains(last, note => note.Midi == last[^1].Midi - 12);
                Assert.Superset(new[] { 1, 3, 5 }.Select(number => (midi + ModeData.Semitones(mode, number)) % 12).ToHashSet(), Classes(last).ToHashSet());
                Assert.Equal(Beats.FromBeats(breath), last.Max(note => note.Start + note.Length));
                Assert.All(cue, note => Assert.InRange(note.Midi, 33, 82));
            });

    private static Rung Rung(string tonic, Mode mode = Mode.Major) => new(Pitch.Parse(tonic), mode, []);

    private static int[] Midi(IEnumerable<ScoreNote> notes) => [.. notes.Select(note => note.Midi)];

    private static int[] Classes(IEnumerable<ScoreNote> notes) => [.. notes.Select(note => note.Midi % 12).Distinct().Order()];

    private static int[] Sorted(IEnumerable<Pitch> pitches) => [.. pitches.Select(pitch => pitch.Midi % 12).Order()];
}
