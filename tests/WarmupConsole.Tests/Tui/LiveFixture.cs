using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tests.Tui;

/// <summary>Sessions in every state, built by hand: an invented choir, a breathing step and a five-note scale.</summary>
internal static class LiveFixture
{
    internal static readonly Moment Now = new(1_000_000_000_000);

    internal static readonly Choir Choir = new()
    {
        Name = "The Lantern Quay Singers",
        Town = "Saltmarsh Ferry",
        Parts =
        [
            Part("Soprano", 0, "C4", "A5", "D4", "F5"),
            Part("Alto", 0, "F3", "E5", "A3", "C5"),
            Part("Tenor", -1, "B2", "A4", "D3", "E4"),
            Part("Bass", -1, "E2", "E4", "G2", "C4"),
        ],
    };

    internal static readonly Exercise Scale = new()
    {
        Id = "five-note-scale",
        Title = "Five-note scale",
        Stage = Stage.Sung,
        Pattern = new([Note(1, "noo"), Note(2), Note(3), Note(4), Note(5, length: 2), Note(4), Note(3), Note(2), Note(1, length: 3), new(null, Beats.FromBeats(1), null)]),
        Tempo = Tempos(88),
        Instruction = "One even line; let the vowel stay where it began.",
        Listen = "Is the third on the way down as high as on the way up?",
    };

    internal static readonly Exercise Breath = new()
    {
        Id = "counted-breath",
        Title = "Counted breath",
        Stage = Stage.Breathing,
        Tempo = Tempos(60),
        Phases = [new(BreathAction.In, 4, "low and quiet"), new(BreathAction.Hold, 2, ""), new(BreathAction.Out, 8, "on ss"), new(BreathAction.Rest, 2, "")],
        Rounds = 3,
        Instruction = "Breathe in low and quiet, and let it go on an even ss.",
        Caution = "Whoever gets dizzy breathes normally and sits down.",
    };

    private static readonly string[] Keys = ["C4", "Db4", "D4", "Eb4", "E4", "F4", "F#4", "G4", "Ab4"];

    internal const string NoKeyReason = "No key fits the sopranos: the pattern spans 26 semitones, and 21 are allowed to them.";

    internal static LiveSession Ready { get; } = new() { Warmup = Warmup(), Rungs = [] };

    internal static LiveSession Tonight { get; } = Ready with { Warmup = Ready.Warmup with { Tonight = TonightText.Read("t2, b3 colds", Choir)! } };

    /// <summary>Beside the first picture, once it is known.</summary>
    internal static ConsoleStatus Known { get; } = new("Sound: the piano on port 2", "sessions/2027-02-16T19-00.jsonl", false)
    {
        Start = new(
            "2027-02-16.yaml in choirs/saltmarsh",
            "2 hints: Three steps in a row leave the basses resting.",
            ["altos flat on A4", "tenors late on E4"],
            ["soprano: F♯5, for Harbour hymn, bars 12-15, until 22 May 2027"]),
    };

    /// <summary>Beside the last picture.</summary>
    internal static ConsoleStatus LookedBack { get; } = new("Sound: the piano on port 2", "sessions/2027-02-16T19-00.jsonl", false)
    {
        Ahead = new(
        [
            "Warmed up without a mark of strain: sopranos up to F5, altos up to C5, tenors up to E4, basses up to C4.",
            "To spare: sopranos strained (once, in G).",
            "To listen for: altos flat (once, in D♭).",
            "Longest beyond its plan: Broken chord, 3:10 for 1:13.",
        ],
        [
            new("Loose shoulders", TimeSpan.FromSeconds(47), TimeSpan.FromSeconds(50)),
            new("Broken chord", TimeSpan.FromSeconds(73), TimeSpan.FromSeconds(190)),
            new("Coming home", TimeSpan.FromSeconds(73), TimeSpan.Zero),
        ]),
    };

    internal static LiveSession IntroduceBreath { get; } = Running(Ready, 1, LiveState.Introduce, null);

    internal static LiveSession Phase { get; } = Running(Ready, 1, LiveState.Phase, 8) with
    {
        RoundIndex = 1,
        PhaseIndex = 2,
        Tempo = Tempo.FromBeatsPerMinute(60),
    };

    internal static LiveSession Introduce { get; } = Sung(LiveState.Introduce, null) with { RungIndex = 0 };

    internal static LiveSession NoKey { get; } = Introduce with { Rungs = [], Warmup = Introduce.Warmup with { Steps = [.. Introduce.Warmup.Steps.Select(WithoutKeys)] } };

    internal static LiveSession Rung { get; } = Sung(LiveState.Rung, 7) with { Marks = [Mark(1, "altos flat in D♭", "flat", ["alto"], true)] };

    internal static LiveSession Pinned { get; } = Rung with { RungIndex = 3, Marks = [.. Rung.Marks, Mark(2, "pinned in D♭", null, [], true) with { Content = new("", [], null, null, null, "") }] };

    internal static LiveSession BreathBetween { get; } = Sung(LiveState.Breath, 2);

    internal static LiveSession Wait { get; } = Sung(LiveState.Wait, null) with { Rolling = false };

    internal static LiveSession Paused { get; } = Rung with { Hold = Hold.Paused };

    internal static LiveSession Silenced { get; } = Rung with { Hold = Hold.Silenced };

    internal static LiveSession High { get; } = Rung with { RungIndex = 8 };

    internal static LiveSession Finished { get; } = Rung with
    {
        State = LiveState.Finished,
        StateEnd = null,
        StepIndex = 9,
        Rungs = [],
        Marks = [Mark(1, "altos flat in D♭", "flat", ["alto"], true), Mark(2, "sopranos strained in G", "strained", ["soprano"], true), Mark(3, "doors closed late", null, [], false)],
        Clocks = new(TimeSpan.FromSeconds(731), TimeSpan.FromSeconds(120), Now, false),
    };

    internal static LiveSession Rehearsed { get; } = Finished with
    {
        RehearsalMarks = [new("Harbour hymn", "12-15", "Harbour hymn, bars 12-15: altos flat on B4"), new("Harbour hymn", "18", "Harbour hymn, bar 18: tenors late")],
    };

    internal static LiveMark Mark(int id, string echo, string? kind, IReadOnlyList<string> parts, bool flushed) =>
        new(id, new(echo, parts, kind, null, null, ""), new(4, 1, Pitch.Parse("Db4"), Now), echo, flushed);

    internal static PatternNote Note(int degree, string? syllable = null, int length = 1) =>
        new(new Degree(degree, 0, 0), Beats.FromFraction(length, 2), syllable is null ? null : new(syllable, "u"));

    internal static Part Part(string name, int placement, string low, string high, string easyLow, string easyHigh) => new(
        name.ToLowerInvariant(), name, [name[..1].ToLowerInvariant()], ["everyone"], 8, placement,
        new(new(Pitch.Parse(low), Pitch.Parse(high)), new(Pitch.Parse(easyLow), Pitch.Parse(easyHigh))));

    internal static LiveSession WithParts(LiveSession session, IReadOnlyList<Part> parts) => session with
    {
        Warmup = session.Warmup with { Choir = session.Warmup.Choir with { Parts = parts } },
        Rungs = [.. session.Rungs.Select(rung => MakeRung(rung.Tonic, parts))],
    };

    private static LiveSession Sung(LiveState state, int? beats) => Running(Ready, 4, state, beats) with
    {
        Rungs = [.. Keys.Select(key => MakeRung(Pitch.Parse(key), Choir.Parts))],
        RungIndex = 1,
        Tempo = Tempo.FromBeatsPerMinute(88),
        Timeline = new(Tempo.FromBeatsPerMinute(88), Beats.Zero, Now - TimeSpan.FromSeconds(1)),
    };

    private static LiveSession Running(LiveSession start, int step, LiveState state, int? beats) => start with
    {
        StepIndex = step,
        State = state,
        StateEnd = beats is { } count ? Beats.FromBeats(count) : null,
        Timeline = new(Tempo.FromBeatsPerMinute(60), Beats.Zero, Now - TimeSpan.FromSeconds(2.2)),
        Clocks = new(TimeSpan.FromSeconds(381), TimeSpan.FromSeconds(42), Now, true),
    };

    private static Rung MakeRung(Pitch tonic, IReadOnlyList<Part> parts) => new(tonic, Mode.Major, [.. parts.Select(part => MakeRungPart(tonic, part))]);

    private static RungPart MakeRungPart(Pitch tonic, Part part)
    {
        Pitch low = tonic.Octaves(part.PlacementOctaves);
        PitchRange span = new(low, low.Transpose(Interval.PerfectFifth));
        return new(part, part.Range.Comfortable.High.Midi + 2 >= span.High.Midi, span);
    }

    private static WarmupStep WithoutKeys(WarmupStep step) => step with { Ladder = new([], [NoKeyReason]) };

    private static Warmup Warmup()
    {
        WarmupStep[] steps =
        [
            Step(Breath with { Id = "shoulders", Title = "Loose shoulders", Stage = Stage.Body }, 2),
            Step(Breath, 6),
            Step(Scale with { Id = "hum", Title = "Hum on three notes", Stage = Stage.Humming }, 0),
            Step(Scale with { Id = "trill", Title = "Lip trill up and down", Stage = Stage.LipTrill }, 0),
            Step(Scale, 0),
            Step(Scale with { Id = "arpeggio", Title = "Broken chord" }, 0),
            Step(Scale with { Id = "octave", Title = "Leap to the octave" }, 0),
            Step(Scale with { Id = "canon", Title = "Scale in canon" }, 0),
            Step(Scale with { Id = "settle", Title = "Coming home", Stage = Stage.Settling }, 0),
        ];
        return new(Choir, new() { Title = "A calm quarter of an hour", Steps = [.. steps.Select(step => step.Plan)] }, steps);
    }

    private static WarmupStep Step(Exercise exercise, int rounds)
    {
        PlanStep plan = new() { ExerciseId = exercise.Id };
        int rungs = exercise.IsSung ? Keys.Length : 0;
        TimeSpan planned = StepTiming.Step(exercise.Tempo.Default, exercise.TalkSeconds, StepTiming.WorkBeats(exercise, rungs, rounds, plan.BreathBeats));
        return new(plan, exercise, exercise.Tempo.Default, new([], []), exercise.TalkSeconds, rounds, planned);
    }

    private static TempoRange Tempos(int beatsPerMinute) =>
        new(Tempo.FromBeatsPerMinute(beatsPerMinute), Tempo.FromBeatsPerMinute(beatsPerMinute - 20), Tempo.FromBeatsPerMinute(beatsPerMinute + 20));
}
