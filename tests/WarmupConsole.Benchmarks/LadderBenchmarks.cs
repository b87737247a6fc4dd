using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Benchmarks;

/// <summary>A whole ladder with who sings and its spelling: made for every step of every plan that is tried.</summary>
internal static class LadderBenchmarks
{
    private const int Repeats = 100;

    private static readonly Part[] Eight =
    [
        .. from voice in new[] { ("soprano", "C4-G5", "C4-F5", 0), ("alto", "G3-D5", "G3-C5", 0), ("tenor", "C3-A4", "C3-F4", -1), ("bass", "E2-D4", "G2-C4", -1) }
           from half in new[] { 1, 2 }
           select new Part($"{voice.Item1}-{half}", voice.Item1, [], [], 5, voice.Item4, new(PitchRangeText.Parse(voice.Item2).Value, PitchRangeText.Parse(voice.Item3).Value)),
    ];

    private static readonly Exercise FiveNotes = new()
    {
        Id = "five-notes",
        Title = "Five notes",
        Stage = Stage.Sung,
        Pattern = PatternText.Parse("1 2 3 4 5 4 3 2 1:2").Value,
        Tempo = new(Tempo.FromBeatsPerMinute(88), Tempo.FromBeatsPerMinute(66), Tempo.FromBeatsPerMinute(108)),
    };

    internal static IEnumerable<Benchmark> All =>
    [
        Ladder("ladder: 8 parts, everyone", new()),
        Ladder("ladder: 8 parts, any, reach 100 %", new() { Limit = LadderSpec.AnyPart, ReachPercent = 100 }),
        Ladder("ladder: 8 parts, from the middle, octave", new() { Shape = LadderShape.OutFromTheMiddle, Limit = LadderSpec.AnyPart, TakesOctave = true }),
    ];

    private static Benchmark Ladder(string name, LadderSpec spec) => new(name, Repeats, () =>
    {
        long rungs = 0;
        for (int i = 0; i < Repeats; i++)
        {
            rungs += LadderBuilder.Build(FiveNotes, Eight, spec).Rungs.Count;
        }

        return rungs;
    });
}
