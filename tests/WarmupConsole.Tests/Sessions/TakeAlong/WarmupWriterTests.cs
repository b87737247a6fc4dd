using NAudio.Midi;
using WarmupConsole.Midi.Files;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Music.Writing;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.TakeAlong;
using WarmupConsole.Tests.Sessions.Live;
using WarmupConsole.Tests.Simulation;

namespace WarmupConsole.Tests.Sessions.TakeAlong;

/// <summary>What an exported file holds, read by another reader, against what the console plays when the same plan is led.</summary>
public sealed class WarmupWriterTests
{
    private const double Tolerance = 0.001; // seconds; a file states a beat in whole microseconds

    public static TheoryData<string> Demo => [.. DemoWarmups.Names];

    [Theory]
    [MemberData(nameof(Demo))]
    public void Every_note_of_the_piano_is_played_at_the_same_distance_as_live(string plan) => IsPlayedAsLive(DemoWarmups.Of(plan));

    [Fact]
    public void So_is_every_exercise_there_is() => IsPlayedAsLive(DemoWarmups.Every);

    [Fact]
    public void So_is_any_plan_at_any_tempo_that_changes_from_key_to_key()
    {
        for (int seed = 1; seed <= 60; seed++)
        {
            Warmup warmup = SimulatedPlans.Next(new Random(seed)).Warmup;
            if (warmup.Steps.Count > 0)
            {
                IsPlayedAsLive(warmup);
            }
        }
    }

    [Theory]
    [MemberData(nameof(Demo))]
    public void Each_part_has_the_notes_that_its_degrees_mean_in_each_key_it_sings_in(string plan)
    {
        Warmup warmup = DemoWarmups.Of(plan);
        ReadMidi file = Read(warmup);
        foreach ((int index, Part part) in warmup.Choir.Parts.Index())
        {
            int[] wanted =
            [
                .. from step in warmup.Steps
                   from rung in step.Ladder.Rungs
                   where rung.Parts[index].Sings
                   from note in step.Exercise.PatternFor(part)!.Notes
                   where note.Degree is not null
                   select rung.Tonic.Midi + (12 * rung.Parts[index].Octaves) + ModeData.IntervalOf(rung.Mode, note.Degree!.Value).Semitones,
            ];
            Assert.Equal(part.Name, Assert.Single(file.Texts(index + 2, MetaEventType.SequenceTrackName)).Text);
            Assert.Equal(wanted, file.NoteOns(index + 2).Select(on => on.NoteNumber));
            Assert.NotEmpty(wanted);
        }
    }

    [Theory]
    [MemberData(nameof(Demo))]
    public void Every_syllable_stands_at_the_note_it_is_sung_on(string plan)
    {
        Warmup warmup = DemoWarmups.Of(plan);
        ReadMidi file = Read(warmup);
        foreach ((int index, Part part) in warmup.Choir.Parts.Index())
        {
            string[] wanted =
            [
                .. from step in warmup.Steps
                   from rung in step.Ladder.Rungs
                   where rung.Parts[index].Sings
                   from note in step.Exercise.PatternFor(part)!.Notes
                   where note.Syllable is not null
                   select note.Syllable!.Text,
            ];
            IReadOnlyList<(long Tick, string Text)> words = file.Texts(index + 2, MetaEventType.Lyric);
            Assert.Equal(wanted, words.Select(word => word.Text));
            Assert.Subset(file.NoteOns(index + 2).Select(on => on.AbsoluteTime).ToHashSet(), words.Select(word => word.Tick).ToHashSet());
        }
    }

    [Fact]
    public void Steps_and_rungs_are_marked_and_every_rung_begins_a_bar_in_its_key()
    {
        WrittenPiece piece = WarmupWriter.Write(LiveFixtures.Whole, []);

        Assert.Equal(
            [
                (0, "1. Counted breath"), (0, "in 4, low"), (4, "hold 2"), (6, "out 6, on ss"), (12, "in 4, low"), (16, "hold 2"), (18, "out 6, on ss"),
                (28, "2. Five-note scale"), (32, "2. Five-note scale in C major"), (43, "2. Five-note scale in Db major"), (54, "2. Five-note scale in D major"),
                (65, "2. Five-note scale in Db major"), (76, "2. Five-note scale in C major"),
                (89, "3. Five-note scale"), (93, "3. Five-note scale in C major"), (104, "3. Five-note scale in Db major"), (115, "3. Five-note scale in D major"),
            ],
            piece.Markers.Select(marker => ((int)marker.At.ToDouble(), marker.Value)));
        Assert.Equal([(28, 0), (43, -5), (54, 2), (65, -5), (76, 0), (104, -5), (115, 2)], piece.Keys.Select(key => ((int)key.At.ToDouble(), key.Value.Fifths)));
        Assert.Equal([(0, 60.0), (89, 96.0)], piece.Tempos.Select(tempo => ((int)tempo.At.ToDouble(), tempo.Value.BeatsPerMinute)));
        Assert.Equal(124, piece.Length.ToDouble());
        Assert.All(piece.Markers, marker => Assert.Contains(marker.At, BarLines(piece)));
    }

    [Fact]
    public void A_step_in_which_no_key_fits_is_passed_over()
    {
        WrittenPiece piece = WarmupWriter.Write(LiveFixtures.Of(LiveFixtures.Step(LiveFixtures.TooWide), LiveFixtures.Step(LiveFixtures.Scale) with { Keys = new() { MostKeys = 1 } }), []);
        Assert.Equal(["2. Five-note scale", "2. Five-note scale in C major"], piece.Markers.Select(marker => marker.Value));
        Assert.Equal(13, piece.Length.ToDouble());
    }

    [Theory]
    [InlineData("soprano")]
    [InlineData("alto")]
    [InlineData("tenor")]
    [InlineData("bass")]
    public void At_home_a_part_sings_nothing_that_is_not_easy_for_it(string id)
    {
        Part part = DemoWarmups.Folder.Choir.Parts.Single(part => part.Id == id);
        foreach (Warmup warmup in (IEnumerable<Warmup>)[.. DemoWarmups.Names.Select(DemoWarmups.Of), DemoWarmups.Every])
        {
            ReadMidi file = Read(HomeWarmup.For(warmup, part));
            Assert.Equal(3, file.Tracks);
            Assert.NotEmpty(file.NoteOns(2));
            Assert.All(file.NoteOns(2), on => Assert.InRange(on.NoteNumber, part.Range.Comfortable.Low.Midi, part.Range.Comfortable.High.Midi));
        }
    }

    private static ReadMidi Read(Warmup warmup) => new(SmfPiece.Build(WarmupWriter.Write(warmup, [])));

    private static void IsPlayedAsLive(Warmup warmup)
    {
        IReadOnlyList<IReadOnlyList<TimedNote>> live = LedPiano.Steps(warmup);
        ReadMidi file = Read(warmup);
        TimedNote[] notes = file.Notes(1);
        Assert.Equal(live.Sum(step => step.Count), notes.Length);
        int at = 0;
        foreach (IReadOnlyList<TimedNote> step in live)
        {
            double first = notes[at].Start;
            foreach (TimedNote wanted in step)
            {
                TimedNote got = notes[at++];
                Assert.Equal((wanted.Midi, wanted.Velocity), (got.Midi, got.Velocity));
                Assert.Equal(wanted.Start, got.Start - first, Tolerance);
                Assert.Equal(wanted.End, got.End - first, Tolerance);
            }
        }
    }

    private static HashSet<Beats> BarLines(WrittenPiece piece)
    {
        HashSet<Beats> lines = [];
        foreach ((int index, Placed<Meter> meter) in piece.Meters.Index())
        {
            Beats end = index + 1 < piece.Meters.Count ? piece.Meters[index + 1].At : piece.Length;
            for (Beats line = meter.At; line < end; line += meter.Value.Length)
            {
                lines.Add(line);
            }
        }

        return lines;
    }
}
