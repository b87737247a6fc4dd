using System.Text;
using System.Xml.Linq;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.TakeAlong;
using WarmupConsole.Storage.MusicXml;
using WarmupConsole.Storage.MusicXml.Writing;
using WarmupConsole.Tests.Sessions.Live;
using WarmupConsole.Tests.Sessions.TakeAlong;
using WarmupConsole.Tests.Simulation;

namespace WarmupConsole.Tests.Storage.MusicXml.Writing;

/// <summary>Exported scores against the schema of their standard, and read back note by note.</summary>
public sealed class MusicXmlSheetTests
{
    public static TheoryData<string> Demo => [.. DemoWarmups.Names];

    [Theory]
    [MemberData(nameof(Demo))]
    public void The_scores_of_the_demo_plans_are_valid(string plan)
    {
        Warmup warmup = DemoWarmups.Of(plan);
        IsValid(MusicXmlSheet.Write(warmup, []));
        Assert.All(warmup.Choir.Parts, part => IsValid(MusicXmlSheet.Write(HomeWarmup.For(warmup, part), TakeAlongTexts.Care)));
    }

    [Fact]
    public void So_is_the_score_of_every_exercise_there_is() => IsValid(MusicXmlSheet.Write(DemoWarmups.Every, []));

    [Fact]
    public void So_is_that_of_any_plan()
    {
        for (int seed = 1; seed <= 60; seed++)
        {
            Warmup warmup = SimulatedPlans.Next(new Random(seed)).Warmup;
            if (warmup.Steps.Any(step => step.Ladder.Rungs.Count > 0))
            {
                IsValid(MusicXmlSheet.Write(warmup, []));
            }
        }
    }

    [Fact]
    public void The_schema_finds_what_is_wrong()
    {
        string score = Encoding.UTF8.GetString(MusicXmlSheet.Write(DemoWarmups.Of("2027-02-09.yaml"), []));
        Assert.NotEmpty(Errors(score.Replace("<step>C</step>", "<step>H</step>", StringComparison.Ordinal)));
        Assert.NotEmpty(Errors(score.Replace("<voice>1</voice>", "<voices>1</voices>", StringComparison.Ordinal)));
        Assert.NotEmpty(Errors(score.Replace("score-partwise", "score", StringComparison.Ordinal)));
    }

    [Fact]
    public void Every_exercise_is_read_back_with_its_degrees_lengths_and_syllables_in_its_first_key()
    {
        Warmup warmup = DemoWarmups.Every;
        Score score = Read(warmup);
        Assert.Equal(warmup.Choir.Parts.Select(part => part.Name), score.Parts.Select(part => part.Name));
        foreach ((int index, Part part) in warmup.Choir.Parts.Index())
        {
            Queue<PartNote> notes = new(score.Parts[index].Notes);
            foreach (WarmupStep step in warmup.Steps.Where(step => step.Ladder.Rungs.Count > 0 && step.Ladder.Rungs[0].Parts[index].Sings))
            {
                Rung rung = step.Ladder.Rungs[0];
                foreach (PatternNote wanted in step.Exercise.PatternFor(part)!.Notes.Where(note => note.Degree is not null))
                {
                    PartNote first = notes.Peek();
                    (Beats length, Pitch pitch) = NextNote(notes);
                    Interval interval = ModeData.IntervalOf(rung.Mode, wanted.Degree!.Value);
                    Assert.Equal((step.Exercise.Id, rung.Tonic.Octaves(rung.Parts[index].Octaves).Transpose(interval)), (step.Exercise.Id, pitch));
                    Assert.Equal(wanted.Length, length);
                    Assert.Equal(wanted.Syllable?.Text ?? "", first.Lyric);
                }
            }

            Assert.Empty(notes);
        }
    }

    [Fact]
    public void Every_bar_is_full()
    {
        XDocument score = XDocument.Load(new MemoryStream(MusicXmlSheet.Write(DemoWarmups.Every, [])));
        foreach (XElement part in score.Root!.Elements("part"))
        {
            long full = 0;
            foreach (XElement bar in part.Elements("measure"))
            {
                full = bar.Element("attributes")?.Element("time") is { } time ? (long)time.Element("beats")! * 4 * Beats.TicksPerBeat / (long)time.Element("beat-type")! : full;
                Assert.Equal(full, bar.Elements("note").Sum(note => (long)note.Element("duration")!));
            }
        }
    }

    [Fact]
    public void An_exercise_stands_once_with_the_keys_of_all_its_steps_and_its_chord_symbols()
    {
        Warmup warmup = DemoWarmups.Build(new()
        {
            Steps =
            [
                new() { ExerciseId = "falling-five", Keys = new() { Start = Pitch.Parse("Db4"), MostKeys = 3 } },
                new() { ExerciseId = "counted-breath" },
                new() { ExerciseId = "falling-five", Keys = new() { MostKeys = 2, Shape = LadderShape.Up } },
            ],
        });
        XElement part = XDocument.Load(new MemoryStream(MusicXmlSheet.Write(warmup, []))).Root!.Element("part")!;
        string[] words = [.. part.Descendants("words").Select(word => word.Value)];
        Assert.Single(words, word => word == "1. Five notes down, two vowels");
        Assert.Contains("Keys in step 1: D♭ D E♭ and back", words);
        Assert.Contains("Keys in step 3: C D♭", words);
        Assert.Contains(words, word => word.StartsWith("in 4, low and quiet; hold 2", StringComparison.Ordinal));
        Assert.Equal("-5", part.Descendants("fifths").First().Value);
        // I V7 I V7 I under a tonic of D flat.
        Assert.Equal(
            ["D-1 major", "A-1 dominant", "D-1 major", "A-1 dominant", "D-1 major"],
            part.Descendants("harmony").Select(chord => $"{chord.Element("root")!.Element("root-step")!.Value}{chord.Element("root")!.Element("root-alter")?.Value} {chord.Element("kind")!.Value}"));
        Assert.Equal("84", part.Descendants("per-minute").First().Value);
    }

    [Fact]
    public void Men_read_in_their_own_octave_and_clef_and_a_canon_comes_in_later()
    {
        Warmup warmup = DemoWarmups.Build(new() { Steps = [new() { ExerciseId = "five-note-canon", Keys = new() { MostKeys = 1 } }] });
        Score score = Read(warmup);
        Assert.Equal(["G2", "G2", "G2-8", "F4"], score.Parts.Select(part => part.Clefs[0]));
        Assert.Equal([60, 60, 48, 48], score.Parts.Select(part => part.Notes[0].Midi));
        Assert.Equal([0, 0, 4, 4], score.Parts.Select(part => (int)score.StartOf(part.Notes[0]).ToDouble()));
    }

    [Fact]
    public void What_a_file_says_stands_as_text_and_no_character_breaks_the_score()
    {
        Warmup warmup = LiveFixtures.Whole with { Choir = LiveFixtures.Choir with { Name = "<b>&\"\uFFFF\u0007" } };
        byte[] score = MusicXmlSheet.Write(warmup, ["</credit-words> \uFFFE"]);
        IsValid(score);
        Assert.Equal("<b>&\"\uFFFD\uFFFD", XDocument.Load(new MemoryStream(score)).Root!.Element("work")!.Element("work-title")!.Value);
    }

    private static Score Read(Warmup warmup)
    {
        ScoreFile read = MusicXmlFile.Parse("export.musicxml", MusicXmlSheet.Write(warmup, []));
        Assert.Empty(read.Problems);
        return read.Score!;
    }

    /// <summary>A note with all that is tied to it.</summary>
    private static (Beats Length, Pitch Pitch) NextNote(Queue<PartNote> notes)
    {
        PartNote note = notes.Dequeue();
        Beats length = note.Length;
        while (note.Is(NoteTraits.TieStart))
        {
            note = notes.Dequeue();
            Assert.True(note.Is(NoteTraits.TieStop));
            length += note.Length;
        }

        return (length, note.Pitch);
    }

    private static void IsValid(byte[] score) => Assert.Empty(MusicXmlSchema.Errors(score));

    private static IReadOnlyList<string> Errors(string score) => MusicXmlSchema.Errors(Encoding.UTF8.GetBytes(score));
}
