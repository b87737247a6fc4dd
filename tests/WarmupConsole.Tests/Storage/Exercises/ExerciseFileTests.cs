using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Exercises;

public sealed class ExerciseFileTests
{
    [Fact]
    public void The_documented_exercises_are_read()
    {
        IReadOnlyList<Exercise> read = Read(Samples.Exercises).Value!;
        Exercise scale = read[0];
        Assert.Equal(("five-note-scale", Stage.Sung, Mode.Major, 20), (scale.Id, scale.Stage, scale.Mode, scale.TalkSeconds));
        Assert.Equal((Beats.FromBeats(7), 10), (scale.Pattern!.Length, scale.Pattern.Notes.Count));
        Assert.Equal(new Syllable("noo", "u"), scale.Pattern.Notes[0].Syllable);
        Assert.Equal(new TempoRange(Bpm(88), Bpm(66), Bpm(108)), scale.Tempo);
        Assert.Equal(["p", "mf", "p"], scale.Dynamics);
        Assert.Equal([Purpose.ScaleMotion, Purpose.Legato], scale.Purposes);
        Assert.Equal(3, scale.Harmony.Count);
        Exercise breath = read[1];
        Assert.Equal((false, 4, 4), (breath.IsSung, breath.Rounds, breath.Phases.Count));
        Assert.Equal(new BreathPhase(BreathAction.In, 4, "low and quiet"), breath.Phases[0]);
    }

    [Theory]
    [InlineData("id: counted-breath", "id: five-note-scale", "id: ^five-note-scale\n    title: Counted", "id 'five-note-scale' is already used in line 3")]
    [InlineData("    title: Five-note scale\n", "", "id: five", "an exercise needs 'title'")]
    [InlineData("stage: sung", "stage: singing", "singing", "write one of body, breathing, humming")]
    [InlineData("mode: major", "mode: locrian", "locrian", "write one of major, minor")]
    [InlineData("1:1/2 2:1/2", "1:1/2 y:1/2", "1/2 ^y:1/2", "'pattern': 'y' is no degree")]
    [InlineData("1:1/2 2:1/2", "1:1/2 2:1/7", "1:1/2 2:^1/7", "'pattern': '1/7' is no length")]
    [InlineData("noo/u ~ ~", "noo/u ~ ", "\"^noo/u", "8 syllables for 9 sounding notes")]
    [InlineData("noo/u ~ ~", "noo/u ~ a/", "noo/u ~ ^a/", "'a/' is no syllable")]
    [InlineData("I:3 V7:2", "I:3 H7:2", "I:3 ^H7", "'harmony': 'H7' is no chord")]
    [InlineData("I:3 V7:2", "I:3 V7:1", "\"^I:3", "The chords last 6 beats and the pattern 7")]
    [InlineData("default: 88", "default: 109", "{default", "from <= default <= to")]
    [InlineData("default: 88, ", "", "{from", "'tempo' needs 'default'")]
    [InlineData("from: 66", "from: 6", "6,", "out of range (20 to 300 bpm)")]
    [InlineData("dynamics: [p, mf, p]", "dynamics: [p, loud]", "loud", "write one of pp, p, mp, mf, f, ff")]
    [InlineData("articulation: legato", "articulation: smooth", "smooth", "write one of legato, staccato, marcato, glide")]
    [InlineData("tuning.scale, ", "tuning.scales, ", "tuning.scales", "'purposes' cannot be 'tuning.scales'")]
    [InlineData("    talk: 20", "    talk: 601", "601", "out of range (0 to 600 seconds)")]
    [InlineData("    talk: 20", "    rounds: 2", "2\n  - id", "'rounds' has no meaning in a sung exercise")]
    [InlineData("do: in", "do: inhale", "inhale", "write one of in, hold, out, rest, move")]
    [InlineData("do: in, counts: 4", "do: in", "{do: in", "a phase needs 'counts'")]
    [InlineData("counts: 8", "counts: 61", "61", "out of range (1 to 60 counts)")]
    [InlineData("do: hold, counts: 2", "do: hold, counts: 5", "5}", "a hold of 5 counts is too long; holds are short, at most 4")]
    [InlineData("    rounds: 4", "    rounds: 21", "21", "out of range (1 to 20 rounds)")]
    [InlineData("    rounds: 4", "    pattern: \"1 2 3\"", "\"1 2 3\"", "'pattern' has no meaning in a breathing exercise")]
    [InlineData("rounds: 4", "round: 4", "round:", "an exercise has no 'round'; did you mean 'rounds'?")]
    public void Each_fault_is_told_at_its_place(string right, string wrong, string at, string words)
    {
        string source = Samples.Bend(Samples.Exercises, right, wrong);
        Expect.OneProblem(Read(source), source, at.Contains("\"^", StringComparison.Ordinal) ? at : Samples.InContext(source, wrong, at), words);
    }

    [Fact]
    public void Lines_of_their_own_are_read_for_one_part_or_several()
    {
        IReadOnlyList<VoiceLine> voices = Read(Samples.InParts).Value![0].Voices;

        Assert.Equal([["men", "alto"], ["bass"]], voices.Select(voice => voice.Parts));
        Assert.Equal(["-:2 1 2 3 4 5:4", "1:10"], voices.Select(voice => PatternText.Write(voice.Placed)));
        Assert.Equal(["loo/u", ""], voices.Select(voice => SyllableText.Write(voice.Pattern)));
    }

    [Theory]
    [InlineData("offset: 2", "offset: 3", "\"1 2 3 4 5:4\", syl", "with its offset this voice lasts 11 beats and the pattern 10; shorten it, or give the pattern rests at its end")]
    [InlineData("offset: 2", "offset: 0", "0}", "'offset': '0' is no length")]
    [InlineData("offset: 2", "delay: 2", "delay", "a voice has no 'delay'")]
    [InlineData("parts: [men, alto]", "parts: [men, Alto]", "Alto", "'parts' is 'Alto', but must be lower-case letters")]
    [InlineData("parts: [men, alto]", "parts: everyone", "everyone", "a line for everyone is the pattern of the exercise itself")]
    [InlineData("parts: bass, ", "", "{pattern: \"1:10", "a voice needs 'parts'")]
    [InlineData(", pattern: \"1:10\"", "", "{parts: bass", "a voice needs 'pattern'")]
    [InlineData("\"1:10\"", "\"x:10\"", "x:10", "'pattern': 'x' is no degree")]
    [InlineData("syllables: \"loo/u\", ", "syllables: \"loo loo\", ", "loo loo", "2 syllables for 5 sounding notes")]
    public void Each_fault_of_a_voice_is_told_at_its_place(string right, string wrong, string at, string words)
    {
        string source = Samples.Bend(Samples.InParts, right, wrong);
        Expect.OneProblem(Read(source), source, at, words);
    }

    [Fact]
    public void Breathing_has_no_voices() => Assert.Contains(
        "'voices' has no meaning in a breathing exercise",
        OnlyMessage(Samples.Bend(Samples.Exercises, "    rounds: 4", "    voices: [{parts: men, pattern: \"1\"}]")),
        StringComparison.Ordinal);

    [Fact]
    public void Sung_exercises_need_a_pattern_and_breathing_ones_need_phases()
    {
        const string Tempo = "tempo: {default: 60, from: 60, to: 60}";
        Assert.Contains("a sung exercise needs a pattern", OnlyMessage($"format: 1\nexercises:\n  - {{id: a, title: a, stage: sung, {Tempo}}}\n"), StringComparison.Ordinal);
        Assert.Contains("a body exercise needs phases", OnlyMessage($"format: 1\nexercises:\n  - {{id: a, title: a, stage: body, {Tempo}}}\n"), StringComparison.Ordinal);
    }

    [Fact]
    public void An_exercise_may_ask_something_of_the_piano()
    {
        Exercise read = ExerciseFile.Read("e", Expect.Bytes(Samples.Exercises.Replace("articulation: legato", "piano: {style: drone, melody: false}", StringComparison.Ordinal))).Value![0];
        PianoWish wanted = new(AccompanimentStyle.Drone, DoublesMelody: false);
        Assert.Equal((wanted, wanted), (read.Piano, ExerciseFile.Read("e", Expect.Bytes(ExerciseFile.Write([read]))).Value![0].Piano));
    }

    [Fact]
    public void One_loudness_word_may_stand_alone() =>
        Assert.Equal(["mp"], Read(Samples.Exercises.Replace("dynamics: [p, mf, p]", "dynamics: mp")).Value![0].Dynamics);

    [Fact]
    public void What_is_written_reads_back_as_the_same_exercises()
    {
        IReadOnlyList<Exercise> all = [.. Read(Samples.Exercises).Value!, .. Read(Samples.InParts).Value!, .. Catalogue.Exercises.Where(e => e.Id is not ("five-note-scale" or "counted-breath"))];
        string written = ExerciseFile.Write(all);
        FileRead<IReadOnlyList<Exercise>> read = Read(written);
        Assert.Empty(read.Problems);
        Assert.Equal(written, ExerciseFile.Write(read.Value!));
        Assert.Equal(all.Select(Fields), read.Value!.Select(Fields));
    }

    private static string Fields(Exercise e) =>
        $"{e.Id}|{e.Title}|{e.Stage}|{e.Mode}|{e.Tempo}|{e.Articulation}|{e.Rounds}|{e.TalkSeconds}|{e.Instruction}|{e.Listen}|{e.Caution}"
        + $"|{string.Join(' ', e.Pattern?.Notes ?? [])}|{string.Join(' ', e.Harmony)}|{string.Join(' ', e.Phases)}|{string.Join(' ', e.Dynamics)}|{string.Join(' ', e.Purposes)}"
        + string.Concat(e.Voices.Select(voice => $"|{string.Join(' ', voice.Parts)}: {voice.Offset}: {string.Join(' ', voice.Pattern.Notes)}"));

    private static string OnlyMessage(string source) => Assert.Single(Read(source).Problems).Message;

    private static Tempo Bpm(int beats) => Tempo.FromBeatsPerMinute(beats);

    private static FileRead<IReadOnlyList<Exercise>> Read(string source) => ExerciseFile.Read("exercises.yaml", Expect.Bytes(source));
}
