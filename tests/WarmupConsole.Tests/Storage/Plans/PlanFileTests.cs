using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Plans;

public sealed class PlanFileTests
{
    private static readonly IReadOnlyList<Exercise> Exercises = ExerciseFile.Read("e.yaml", Expect.Bytes(Samples.Exercises)).Value!;
    private static readonly Choir Choir = ChoirFile.Read("choir.yaml", Expect.Bytes(Samples.Choir)).Value!;

    [Fact]
    public void The_documented_plan_is_read()
    {
        Plan plan = Read(Samples.Plan).Value!;
        Assert.Equal((new DateOnly(2027, 2, 16), "A calm quarter of an hour", 15, true), (plan.Date, plan.Title, plan.Minutes, plan.Rolling));
        PlanStep breath = plan.Steps[0];
        Assert.Equal(("counted-breath", 20, Tempo.FromBeatsPerMinute(60), 3), (breath.ExerciseId, breath.TalkSeconds, breath.Tempo, breath.Rounds));
        Assert.Equal(new LadderSpec { Start = Pitch.MiddleC, MostKeys = 6 }, plan.Steps[1].Keys);
        Assert.Equal(["altos flat in E last week", "this climbs to E from below"], plan.Steps[1].Because);
    }

    [Fact]
    public void What_is_left_out_is_as_usual()
    {
        Plan plan = Read("format: 1\nsteps:\n  - exercise: five-note-scale\n").Value!;
        Assert.Equal((null, "", 15, true), (plan.Date, plan.Title, plan.Minutes, plan.Rolling));
        Assert.Equal(new PlanStep { ExerciseId = "five-note-scale" }, plan.Steps[0] with { Because = new PlanStep { ExerciseId = "" }.Because });
    }

    [Theory]
    [InlineData("format: 1", "format: one", "one", "'format' must be a number")]
    [InlineData("format: 1", "format: 0", "0", "out of range (1 to 1)")]
    [InlineData("format: 1", "format: 2", "2", "update the program")]
    [InlineData("format: 1\n", "", "date: 2027", "a plan needs 'format'")]
    [InlineData("2027-02-16", "16.2.2027", "16.2.2027", "'date' must be a date such as 2027-02-16")]
    [InlineData("2027-02-16", "2027-02-30", "2027-02-30", "'date' must be a date")]
    [InlineData("title: A calm quarter of an hour", "title: [a]", "[a]", "'title' must be a text, and here is a list")]
    [InlineData("minutes: 15", "minutes: 4", "4", "'minutes' is 4, which is out of range (5 to 60 minutes)")]
    [InlineData("minutes: 15", "minutes: 61", "61", "out of range (5 to 60 minutes)")]
    [InlineData("minutes: 15", "minutes: \"15\"", "\"15\"", "'minutes' must be a number from 5 to 60 minutes, and here is '15'")]
    [InlineData("minutes: 15", "minutes: 15.5", "15.5", "'minutes' must be a whole number")]
    [InlineData("minutes: 15", "minutes:", "minutes:^", "'minutes' must be a number from 5 to 60 minutes, and here is nothing")]
    [InlineData("advance: rolling", "advance: jumping", "jumping", "write one of rolling, waiting")]
    [InlineData("exercise: counted-breath", "exercise: Counted Breath", "Counted Breath", "lower-case letters")]
    [InlineData("exercise: counted-breath", "exercise: counted-breth", "counted-breth", "did you mean 'counted-breath'?")]
    [InlineData("exercise: counted-breath", "exercise: zzz", "zzz", "look in the exercises folder")]
    [InlineData("- exercise: counted-breath\n    talk: 20", "- talk: 20", "talk: 20", "a step needs 'exercise'")]
    [InlineData("talk: 20", "talk: -1", "-1", "out of range (0 to 600 seconds)")]
    [InlineData("talk: 20", "talk: 601", "601", "out of range (0 to 600 seconds)")]
    [InlineData("talk: 20", "tlak: 20", "tlak", "a step has no 'tlak'; did you mean 'talk'?")]
    [InlineData("tempo: 60", "tempo: 19", "19", "out of range (20 to 300 bpm)")]
    [InlineData("tempo: 60", "tempo: 320", "320", "out of range (20 to 300 bpm)")]
    [InlineData("tempo: 60", "tempo: 60.1234", "60.1234", "out of range")]
    [InlineData("tempo: 60", "tempo: quick", "quick", "'tempo' must be a number")]
    [InlineData("breath: 2", "tempo: {from: 60}", "{from", "'tempo' needs 'to'; add it")]
    [InlineData("breath: 2", "tempo: {from: 19, to: 84}", "19", "'from' is 19, which is out of range (20 to 300 bpm)")]
    [InlineData("breath: 2", "tempo: {from: 60, to: 301}", "301", "'to' is 301, which is out of range (20 to 300 bpm)")]
    [InlineData("breath: 2", "tempo: {from: 60, to: 84, fro: 1}", "fro: 1", "'tempo' has no 'fro'; did you mean 'from'?")]
    [InlineData("breath: 2", "tempo: [60, 84]", "[60", "'tempo' must be a number from 20 to 300 bpm, and here is a list")]
    [InlineData("tempo: 60", "tempo: {to: 84}", "{to", "a tempo that changes from key to key is for sung exercises, and 'counted-breath' is counted; write one tempo")]
    [InlineData("rounds: 3", "rounds: 21", "21", "out of range (1 to 20 rounds)")]
    [InlineData("rounds: 3", "rounds: 0", "rounds: ^0", "out of range (1 to 20 rounds)")]
    [InlineData("breath: 2", "breath: 9", "9", "out of range (1 to 8 beats)")]
    [InlineData("breath: 2", "rounds: 2", "2\n    keys", "'rounds' is for body and breathing exercises")]
    [InlineData("breath: 2", "piano: loud", "loud", "write one of cue-only, melody, block, broken, bass-and-chord, drone")]
    [InlineData("breath: 2", "piano: {style: loud}", "loud", "write one of cue-only, melody, block, broken, bass-and-chord, drone")]
    [InlineData("breath: 2", "piano: {between: fifths}", "fifths", "write one of tonic, dominant, chromatic")]
    [InlineData("breath: 2", "piano: {clicks: none}", "clicks", "'piano' has no 'clicks'; did you mean 'click'?")]
    [InlineData("breath: 2", "piano: {melody: maybe}", "maybe", "'melody' must be")]
    [InlineData("start: C4", "start: H4", "H4", "'start' must be a pitch")]
    [InlineData("shape: up-and-back", "shape: round", "round", "write one of up-and-back, up, down, down-and-back")]
    [InlineData("limit: everyone", "limit: altos", "altos", "write one of everyone, any, soprano, bass, women, upper, men")]
    [InlineData("reach: 0", "reach: 101", "101", "out of range (0 to 100 per cent)")]
    [InlineData("tolerance: 2", "tolerance: 13", "13", "out of range (0 to 12 semitones)")]
    [InlineData("most: 6", "most: 0", "0\n    because", "out of range (1 to 24 keys)")]
    [InlineData("most: 6", "by: 0", "0\n    because", "out of range (1 to 12 semitones)")]
    [InlineData("most: 6", "by: 13", "13", "out of range (1 to 12 semitones)")]
    [InlineData("most: 6", "octave: maybe", "maybe", "'octave' must be true or false")]
    [InlineData("most: 6", "moist: 6", "moist", "'keys' has no 'moist'; did you mean 'most'?")]
    [InlineData("because: [attention before sound]", "because: attention", "attention", "'because' must be a list")]
    [InlineData("because: [attention before sound]", "because: [[a]]", "[a]", "'because' must be a text")]
    [InlineData("because: [attention before sound]", "because: [\"\"]", "\"\"", "'because' is empty")]
    public void Each_fault_is_told_at_its_place(string right, string wrong, string at, string words)
    {
        string source = Samples.Bend(Samples.Plan, right, wrong);
        Expect.OneProblem(Read(source), source, Samples.InContext(source, wrong, at), words);
    }

    [Theory]
    [InlineData("tempo: {from: 66, to: 84.5}", 66_000, 84_500)]
    [InlineData("tempo: {to: 72}", null, 72_000)]
    [InlineData("tempo: 88", 88_000, null)]
    public void A_tempo_may_change_from_the_first_key_to_the_last(string line, int? first, int? last)
    {
        PlanStep step = Read(Samples.Plan.Replace("breath: 2", line, StringComparison.Ordinal)).Value!.Steps[1];
        Assert.Equal((first, last), (step.Tempo?.MilliBeatsPerMinute, step.LastTempo?.MilliBeatsPerMinute));
    }

    [Theory]
    [InlineData("broken", AccompanimentStyle.Broken, null, null, null)]
    [InlineData("{style: cue-only, between: chromatic, click: count-in}", AccompanimentStyle.CueOnly, null, BetweenKeys.Chromatic, Click.CountIn)]
    [InlineData("{melody: false}", null, false, null, null)]
    [InlineData("{click: every-beat}", null, null, null, Click.EveryBeat)]
    public void The_piano_is_a_style_or_says_more_in_a_plan_and_in_a_step(string value, AccompanimentStyle? style, bool? melody, BetweenKeys? between, Click? click)
    {
        PianoWish wanted = new(style, melody, between, click);
        Plan plan = Read(Samples.Plan.Replace("breath: 2", $"piano: {value}", StringComparison.Ordinal).Replace("minutes: 15", $"minutes: 15\npiano: {value}", StringComparison.Ordinal)).Value!;
        Assert.Equal((wanted, wanted), (plan.Piano, plan.Steps[1].Piano));
        Plan again = PlanFile.Read("p", Expect.Bytes(PlanFile.Write(plan))).Value!;
        Assert.Equal((wanted, PianoWish.None, wanted), (again.Piano, again.Steps[0].Piano, again.Steps[1].Piano));
    }

    [Fact]
    public void All_faults_are_told_at_once_in_the_order_of_the_file()
    {
        string source = Samples.Plan.Replace("minutes: 15", "minutes: 4").Replace("tempo: 60", "tempo: 320").Replace("limit: everyone", "limit: nobody");
        Assert.Equal([4, 9, 17], Read(source).Problems.Select(problem => problem.Line));
    }

    [Fact]
    public void Steps_must_be_there_and_not_too_many()
    {
        Assert.Contains("a plan needs 'steps'", Assert.Single(Read("format: 1\n").Problems).Message, StringComparison.Ordinal);
        Assert.Contains("0 entries, which is out of range (1 to 60 steps)", Assert.Single(Read("format: 1\nsteps: []\n").Problems).Message, StringComparison.Ordinal);
        string many = "format: 1\nsteps:\n" + string.Concat(Enumerable.Repeat("  - exercise: five-note-scale\n", 61));
        Assert.Contains("61 entries", Assert.Single(Read(many).Problems).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("off: [{rule: breath-first}]", "{rule", "a rule that is off needs 'because'")]
    [InlineData("off: [{rule: breth-first, because: x}]", "breth-first", "did you mean 'breath-first'?")]
    [InlineData("off: [{rule: no-such, because: x}]", "no-such", "did you mean one of breath-first, ")]
    [InlineData("off: [{rule: breath-first, because: x}, {rule: breath-first, because: y}]", "breath-first, because: y", "already used in line 2")]
    [InlineData("off: breath-first", "breath-first", "'off' must be a list")]
    [InlineData("bare: {told: true, because: x}", "\n  - exercise^", "a bare rehearsal has no warm-up")]
    public void Rules_that_are_off_and_bare_rehearsals_are_read_strictly(string line, string at, string words)
    {
        string source = $"format: 1\n{line}\nsteps:\n  - exercise: five-note-scale\n";
        Expect.OneProblem(Read(source), source, at.Replace("\n  - exercise^", "- exercise", StringComparison.Ordinal), words);
    }

    [Fact]
    public void A_bare_rehearsal_needs_no_steps()
    {
        Plan plan = Read("format: 1\ndate: 2027-05-04\nbare: {told: true, because: as on the day}\n").Value!;
        Assert.Equal(new BareRehearsal(true, "as on the day"), plan.Bare);
        Assert.Empty(plan.Steps);
        Assert.Equal(plan.Bare, Read(PlanFile.Write(plan)).Value!.Bare);
        Assert.Contains("'bare' needs 'because'", Assert.Single(Read("format: 1\nbare: {told: true}\n").Problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Steps_and_their_fields_have_places_beside_the_plan()
    {
        PlanPlaces places = PlanPlaces.Of(Samples.Plan);
        Assert.Equal(Expect.PlaceOf(Samples.Plan, "talk: 20"), At(places, 0, "talk"));
        Assert.Equal(Expect.PlaceOf(Samples.Plan, "exercise: five-note-scale"), At(places, 1, "talk"));
        Assert.Equal(Expect.PlaceOf(Samples.Plan, "keys:"), At(places, 1, "keys"));
        Assert.Equal(Expect.PlaceOf(Samples.Plan, "minutes"), At(places, null, "minutes"));
        Assert.Equal(Expect.PlaceOf(Samples.Plan, "steps"), At(places, null, ""));
        Assert.Equal((1, 1), At(PlanPlaces.Of("["), 3, "keys"));
    }

    private static (int Line, int Column) At(PlanPlaces places, int? step, string field) => places.Find(step, field) is var place ? (place.Line, place.Column) : default;

    [Fact]
    public void A_newer_file_is_refused_with_one_sentence_whatever_else_it_holds()
    {
        FileProblem problem = Assert.Single(Read("format: 2\nnovelty: 1\nminutes: 900\n").Problems);
        Assert.Contains("format 2", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_choir_names_are_taken_as_they_are() =>
        Assert.True(PlanFile.Read("p", Expect.Bytes(Samples.Plan.Replace("counted-breath", "no-such-thing"))).IsGood);

    [Fact]
    public void What_is_written_reads_back_as_the_same_plan() => AnyPlan.Sample(
        plan =>
        {
            FileRead<Plan> read = PlanFile.Read("p", Expect.Bytes(PlanFile.Write(plan)));
            Assert.Empty(read.Problems);
            Assert.Equal(Fields(plan), Fields(read.Value!));
        },
        iter: 2_000);

    private static FileRead<Plan> Read(string source) => PlanFile.Read("plan.yaml", Expect.Bytes(source), new(Exercises, Choir));

    /// <summary>Everything a plan says, in a form that compares lists by what they hold.</summary>
    private static string Fields(Plan plan) => string.Join('\n', plan.Steps
        .Select(step => $"{step with { Because = [] }}|{string.Join('|', step.Because)}")
        .Prepend($"{plan.Date}|{plan.Title}|{plan.Minutes}|{plan.Rolling}|{string.Join(';', plan.Off)}")
        .Select(line => line.Replace("System.String[]", "", StringComparison.Ordinal)));

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(index => values[index]);

    private static readonly Gen<string> AnyOffRule = OneOf([.. PlanCheck.RuleNames]);

    private static readonly Gen<LadderSpec> AnyKeys =
        from start in OneOf<Pitch?>(null, Pitch.MiddleC, Pitch.Parse("Bb3"), Pitch.Parse("F#4"))
        from shape in Gen.Enum<LadderShape>()
        from limit in AnyValue.Id
        from reach in Gen.Int[0, 100]
        from tolerance in Gen.Int[0, 12]
        from most in Gen.Int[0, 24]
        from apart in Gen.Int[1, 12]
        from octave in Gen.Bool
        select new LadderSpec
        {
            Start = start,
            Shape = shape,
            Limit = limit,
            ReachPercent = reach,
            ToleranceSemitones = tolerance,
            StepSemitones = apart,
            TakesOctave = octave,
            MostKeys = most == 0 ? null : most,
        };

    private static readonly Gen<PlanStep> AnyStep =
        from exercise in AnyValue.Id
        from talk in Gen.Int[-1, 600]
        from tempo in Gen.Int[19_999, 300_000]
        from last in Gen.Int[-300_000, 300_000]
        from keys in AnyKeys
        from rounds in Gen.Int[0, 20]
        from breath in Gen.Int[1, 8]
        from because in AnyValue.Text.List[0, 3]
        select new PlanStep
        {
            ExerciseId = exercise,
            TalkSeconds = talk < 0 ? null : talk,
            Tempo = tempo < 20_000 ? null : Tempo.FromMilliBeatsPerMinute(tempo),
            LastTempo = last < 20_000 ? null : Tempo.FromMilliBeatsPerMinute(last),
            Keys = keys,
            Rounds = rounds == 0 ? null : rounds,
            BreathBeats = breath,
            Because = because,
        };

    private static readonly Gen<Plan> AnyPlan =
        from day in Gen.Int[0, 10_000]
        from title in AnyValue.Text
        from minutes in Gen.Int[5, 60]
        from rolling in Gen.Bool
        from off in Gen.Select(AnyOffRule, AnyValue.Text, (rule, because) => new RuleOff(rule, because)).Array[0, 1]
        from steps in AnyStep.List[1, 6]
        select new Plan { Off = off, Date = day == 0 ? null : new DateOnly(2020, 1, 1).AddDays(day), Title = title, Minutes = minutes, Rolling = rolling, Steps = steps };
}
