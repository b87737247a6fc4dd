using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Benchmarks;

/// <summary>The key ladder, re-made at every live change.</summary>
internal static class MusicBenchmarks
{
    private static readonly Exercise Arpeggio = DemoChoir.Folder.Exercises.Single(exercise => exercise.Id == "octave-arpeggio");

    // Every part of the demo choir divided in two.
    private static readonly Part[] EightParts =
        [.. DemoChoir.Folder.Choir.Parts.SelectMany(part => (Part[])[part with { Id = part.Id + "-1" }, part with { Id = part.Id + "-2" }])];

    private static readonly LadderSpec Spec = new() { Limit = LadderSpec.AnyPart, ReachPercent = 100 };

    internal static IEnumerable<Benchmark> All =>
    [
        new("ladder for 8 parts", 1, () => LadderBuilder.Build(Arpeggio, EightParts, Spec).Rungs.Count),
    ];
}
