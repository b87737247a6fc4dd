using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.Tests.Music.Sounding;

/// <summary>What holds for the accompaniment of every shipped exercise, in every key, whoever sings.</summary>
public class AccompanimentLawTests
{
    private const int Many = 1500;

    private static readonly Exercise[] Sung = [.. Catalogue.Exercises.Where(exercise => exercise.IsSung)];

    private static readonly Gen<(Exercise Exercise, Rung Rung)> InAnyKey =
        Gen.Select(Gen.OneOf(Sung), Gen.Int[45, 79], Gen.Bool, Gen.Bool).Select((exercise, tonic, women, men) => (exercise, RungOf(exercise, tonic, women, men)));

    private static readonly Gen<PianoPart> AnyPart = Gen.Select(
        Gen.Enum<AccompanimentStyle>(), Gen.Bool, Gen.Enum<BetweenKeys>(), Gen.Enum<Click>()).Select((style, melody, between, click) => new PianoPart(style, melody, between, click));

    [Fact]
    public void No_voice_of_the_piano_runs_in_octaves_or_fifths_with_the_choir() => Assert.All(Everywhere(), given =>
    {
        IReadOnlyList<VoicedChord> chords = Accompaniment.Voiced(given.Exercise, given.Rung);
        foreach ((VoicedChord before, VoicedChord after) in chords.Zip(chords.Skip(1)))
        {
            foreach ((int from, int to) in Moves(given, after.Start))
            {
                for (int voice = 0; voice < Grip.Voices; voice++)
                {
                    Assert.False(
                        Parallel((before.Grip[voice], after.Grip[voice]), (from, to)),
                        $"{given.Exercise.Id} on {given.Rung.Tonic}, beat {after.Start}: voice {voice} {before.Grip} to {after.Grip}, sung {from} to {to}");
                }
            }
        }
    });

    [Fact]
    public void Every_voice_stays_within_the_stated_range() => InAnyKey.Sample(given => Assert.All(Accompaniment.Voiced(given.Exercise, given.Rung), chord =>
    {
        Assert.InRange(chord.Grip.Bass, GripBook.LowestBass, GripBook.HighestBass);
        Assert.InRange(chord.Grip.Low, GripBook.LowestTone, chord.Grip.Middle - 1);
        Assert.InRange(chord.Grip.Top, chord.Grip.Middle + 1, GripBook.HighestTone);
        Assert.True(chord.Grip.Bass < chord.Grip.Low);
    }), iter: Many);

    [Fact]
    public void Every_voice_goes_a_short_way_but_where_only_a_wide_one_keeps_out_of_the_way_of_the_choir()
    {
        int[] beyond = [.. from given in Everywhere()
                           let chords = Accompaniment.Voiced(given.Exercise, given.Rung)
                           from pair in chords.Zip(chords.Skip(1))
                           select Enumerable.Range(0, Grip.Voices).Max(voice => Beyond(voice, Math.Abs(pair.Second.Grip[voice] - pair.First.Grip[voice])))];
        Assert.InRange(beyond.Count(way => way > 0), 0, beyond.Length / 10_000);
        Assert.InRange(beyond.Max(), 0, 3);
    }

    [Fact]
    public void The_chords_are_those_of_the_exercise_whole_and_begin_and_end_on_their_roots() => InAnyKey.Sample(given =>
    {
        IReadOnlyList<VoicedChord> chords = Accompaniment.Voiced(given.Exercise, given.Rung);
        Assert.Equal(given.Exercise.Harmony.Select(chord => chord.Length), chords.Select(chord => chord.Length));
        Assert.All(given.Exercise.Harmony.Zip(chords), pair => Assert.Equal(Classes(pair.First, given.Rung), Classes(pair.Second.Grip)));
        Assert.False(chords[0].Grip.IsInverted || chords[^1].Grip.IsInverted);
    });

    [Fact]
    public void In_every_style_all_notes_end_with_the_exercise_on_the_piano_and_no_key_is_struck_while_it_sounds() =>
        Gen.Select(InAnyKey, AnyPart).Sample((given, piano) =>
        {
            IReadOnlyList<ScoreNote> notes = Accompaniment.For(given.Exercise, given.Rung, piano);
            Assert.All(notes, note =>
            {
                Assert.InRange(note.Midi, Keyboard.LowestMidi, Keyboard.HighestMidi);
                Assert.InRange(note.Velocity, 1, 127);
                Assert.True(note.Start >= Beats.Zero && note.Length > Beats.Zero);
                Assert.True(note.Start + note.Length <= given.Exercise.Pattern!.Length || note.Midi == Keyboard.HighestMidi);
            });
            Assert.All(notes.GroupBy(note => note.Midi), key => Assert.All(
                key.Zip(key.Skip(1)), pair => Assert.True(pair.First.Start + pair.First.Length <= pair.Second.Start)));
            Assert.Equal(notes.OrderBy(note => note.Start), notes);
        });

    [Fact]
    public void Unaccompanied_nothing_sounds_but_the_taps() => InAnyKey.Sample(given =>
    {
        Assert.Empty(Accompaniment.For(given.Exercise, given.Rung, PianoPart.Usual with { Style = AccompanimentStyle.CueOnly }));
        Assert.All(
            Accompaniment.For(given.Exercise, given.Rung, PianoPart.Usual with { Style = AccompanimentStyle.CueOnly, Click = Click.EveryBeat }),
            tap => Assert.Equal(Keyboard.HighestMidi, tap.Midi));
    });

    [Fact]
    public void Chords_lie_softly_under_what_is_sung_at_that_moment() => Gen.Select(InAnyKey, AnyPart).Sample((given, piano) =>
    {
        string[] words = [.. given.Exercise.Dynamics];
        int loudest = words.Max(DynamicsData.Velocity);
        int softest = words.Min(DynamicsData.Velocity);
        IEnumerable<ScoreNote> chords = Accompaniment.For(given.Exercise, given.Rung, piano with { DoublesMelody = false, Click = Click.None });
        Assert.All(chords.Where(_ => piano.Style != AccompanimentStyle.Melody), note => Assert.InRange(note.Velocity, softest - 16, loudest - 16));
    });

    private static Rung RungOf(Exercise exercise, int tonic, bool women, bool men) => new(
        KeySpelling.TonicFor(tonic, exercise.Mode),
        exercise.Mode,
        [
            new(Samples.Part("Soprano", "C4-G5", "C4-F5", 0), women, new(Pitch.MiddleC, Pitch.MiddleC)),
            new(Samples.Part("Bass", "F2-C4", "G2-C4", -1), men, new(Pitch.MiddleC, Pitch.MiddleC)),
        ]);

    /// <summary>The notes of every line on either side of a beat, where it moves without a rest: by another way than the program's.</summary>
    private static IEnumerable<(int From, int To)> Moves((Exercise Exercise, Rung Rung) given, Beats at) =>
        from part in given.Rung.Parts.Any(part => part.Sings) ? given.Rung.Parts.Where(part => part.Sings) : [given.Rung.Parts[0]]
        let notes = given.Exercise.PatternFor(part.Part)!.Notes
        let ends = notes.Select((_, i) => notes.Take(i + 1).Sum(note => note.Length.Ticks)).ToArray()
        let next = Array.IndexOf(ends, at.Ticks) + 1
        where next > 0 && next < notes.Count && notes[next - 1].Degree is not null && notes[next].Degree is not null
        let before = Midi(notes[next - 1].Degree!.Value, given.Rung, part.Octaves)
        let after = Midi(notes[next].Degree!.Value, given.Rung, part.Octaves)
        where before != after
        select (before, after);

    private static int Midi(Degree degree, Rung rung, int octaves) => rung.Tonic.Midi + (12 * octaves) + ModeData.IntervalOf(rung.Mode, degree).Semitones;

    /// <summary>Two fifths or two octaves in a row, both voices moving the same way (compound ones too).</summary>
    private static bool Parallel((int From, int To) piano, (int From, int To) sung)
    {
        int before = Math.Abs(piano.From - sung.From) % 12;
        int after = Math.Abs(piano.To - sung.To) % 12;
        return (piano.To - piano.From) * (sung.To - sung.From) > 0 && before == after && before is (0 or 7)
            && Math.Sign(piano.From - sung.From) == Math.Sign(piano.To - sung.To);
    }

    private static int[] Classes(HarmonyChord chord, Rung rung)
    {
        Assert.True(RomanNumeral.TryParse(chord.Numeral, out RomanNumeral numeral));
        return [.. numeral.Tones(rung.Mode).Select(tone => (rung.Tonic.Midi + tone.Semitones) % 12).Order()];
    }

    private static int[] Classes(Grip grip) => [.. Enumerable.Range(0, Grip.Voices).Select(voice => grip[voice] % 12).Distinct().Order()];

    /// <summary>Every exercise in every key, whoever sings: not a sample, since exceptions are rare.</summary>
    private static IEnumerable<(Exercise Exercise, Rung Rung)> Everywhere() =>
        from exercise in Sung
        from tonic in Enumerable.Range(45, 35)
        from women in new[] { true, false }
        from men in new[] { true, false }
        select (exercise, RungOf(exercise, tonic, women, men));

    /// <summary>Semitones by which a voice goes further than it should.</summary>
    private static int Beyond(int voice, int way) => Math.Max(0, way - (voice == 0 ? Motion.WidestOfBass : Motion.WidestOfRight));
}
