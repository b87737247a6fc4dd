using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>A small choir and short warm-ups to lead.</summary>
internal static class LiveFixtures
{
    public static Choir Choir { get; } = new()
    {
        Name = "The Lantern Quay Singers",
        Town = "Saltmarsh Ferry",
        Parts =
        [
            Part("soprano", "s", 0, "C4", "G5"),
            Part("alto", "a", 0, "G3", "D5"),
            Part("tenor", "t", -1, "C3", "A4"),
            Part("bass", "b", -1, "F2", "C4"),
        ],
    };

    /// <summary>The same choir, able to go four semitones beyond what is easy at each end; eight in each part.</summary>
    public static Choir WithExtremes { get; } = Choir with
    {
        Parts = [.. Choir.Parts.Select(part => part with { Singers = 8, Range = part.Range with { Extreme = new(KeySpelling.TonicFor(part.Range.Comfortable.Low.Midi - 4, Mode.Major), KeySpelling.TonicFor(part.Range.Comfortable.High.Midi + 4, Mode.Major)) } })],
    };

    /// <summary>Five notes up and down in even beats: 9 beats.</summary>
    public static Exercise Scale { get; } = new()
    {
        Id = "five-note-scale",
        Title = "Five-note scale",
        Stage = Stage.Sung,
        Pattern = new([.. new[] { 1, 2, 3, 4, 5, 4, 3, 2, 1 }.Select(degree => Note(degree, 1))]),
        Tempo = new(Tempo.FromBeatsPerMinute(60), Tempo.FromBeatsPerMinute(50), Tempo.FromBeatsPerMinute(100)),
        TalkSeconds = 10,
    };

    /// <summary>In for 4, hold for 2, out for 6.</summary>
    public static Exercise Breath { get; } = new()
    {
        Id = "counted-breath",
        Title = "Counted breath",
        Stage = Stage.Breathing,
        Phases = [new(BreathAction.In, 4, "low"), new(BreathAction.Hold, 2, ""), new(BreathAction.Out, 6, "on ss")],
        Rounds = 2,
        Tempo = new(Tempo.FromBeatsPerMinute(60), Tempo.FromBeatsPerMinute(50), Tempo.FromBeatsPerMinute(72)),
        TalkSeconds = 20,
    };

    /// <summary>A leap so wide that no key fits everyone.</summary>
    public static Exercise TooWide { get; } = Scale with { Id = "too-wide", Title = "Too wide", Pattern = new([Note(1, 2), new(new(5, 0, 3), Beats.FromBeats(2), null)]) };

    /// <summary>Breath, then a scale in C, D flat, D, D flat, C, then a scale upwards in three keys.</summary>
    public static Warmup Whole { get; } = Of(
        Step(Breath),
        Step(Scale) with { Keys = new() { MostKeys = 3 } },
        Step(Scale) with { Keys = new() { MostKeys = 3, Shape = LadderShape.Up }, Tempo = Tempo.FromBeatsPerMinute(96) });

    public static Warmup Of(params PlanStep[] steps) => WarmupBuilder.Build(
        Choir,
        new() { Steps = steps },
        new[] { Scale, Breath, TooWide }.ToDictionary(exercise => exercise.Id));

    public static Warmup Waiting(Warmup warmup) => warmup with { Plan = warmup.Plan with { Rolling = false } };

    public static PlanStep Step(Exercise exercise) => new() { ExerciseId = exercise.Id };

    private static PatternNote Note(int degree, int beats) => new(new Degree(degree, 0, 0), Beats.FromBeats(beats), null);

    private static Part Part(string id, string letter, int placement, string low, string high)
    {
        PitchRange range = new(Pitch.Parse(low), Pitch.Parse(high));
        return new(id, char.ToUpperInvariant(id[0]) + id[1..], [letter, id + "s"], ["everyone"], 8, placement, new(range, range));
    }
}
