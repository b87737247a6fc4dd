using System.Globalization;
using WarmupConsole.App.Running;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Benchmarks;

/// <summary>Seasons of session logs on disk, read, checked and reviewed: one season of 30 evenings, ten years of 90 each, and two sizes between to show the growth.</summary>
internal static class SeasonBenchmarks
{
    private const int Events = 400;
    private const int Samples = 15;

    private static readonly SessionEvent[] Run = [.. DemoChoir.Records().Select(record => record.Event)];

    internal static IEnumerable<Benchmark> In(string folder) =>
        ((int[])[30, 225, 450, 900]).Select(evenings =>
        {
            Lazy<ChoirFolder> choir = new(() => Make(Path.Combine(folder, evenings.ToString(CultureInfo.InvariantCulture)), evenings));
            return new Benchmark($"{evenings} sessions of {Events} events read and reviewed", 1, () => Review(choir.Value, evenings)) { Samples = Samples };
        });

    private static long Review(ChoirFolder folder, int evenings)
    {
        SeasonReview review = SeasonReview.Of(folder, weeks: 0);
        return review.Sessions.Count == evenings ? review.Rates.Count : throw new InvalidOperationException($"{review.Sessions.Count} of {evenings} sessions were read.");
    }

    private static ChoirFolder Make(string root, int evenings)
    {
        Directory.CreateDirectory(root);
        File.WriteAllText(Path.Combine(root, "choir.yaml"), DemoChoir.Folder.ChoirYaml.Replace("demo: true", "demo: false", StringComparison.Ordinal));
        DateTimeOffset first = new(2017, 1, 10, 19, 30, 0, TimeSpan.Zero);
        for (int evening = 0; evening < evenings; evening++)
        {
            Write(Path.Combine(root, "sessions"), first.AddDays(4 * evening), evening);
        }

        return ChoirFolder.Open(root, new SettingsFolder(Path.Combine(root, "settings"))).Value!;
    }

    /// <summary>The demo's run over and over until there are enough events; some marks are left out, each evening others.</summary>
    private static void Write(string folder, DateTimeOffset start, int evening)
    {
        using SessionLogFile file = SessionLogFile.Create(folder, start, "here").File!;
        RunStarted first = (RunStarted)Run[0] with { ExercisesYaml = ExerciseFile.Write(DemoChoir.Warmup.Steps.Select(step => step.Exercise)) };
        IEnumerable<SessionEvent> events = Enumerable.Repeat(Run[1..^1], 10).SelectMany(run => run).Where((fact, i) => fact is not MarkMade || ((i * 7) + evening) % 3 != 0);
        foreach ((int index, SessionEvent fact) in events.Take(Events - 2).Prepend(first).Append(Run[^1]).Index())
        {
            file.Writer.Add(fact, start.AddSeconds(3 * index), new Moment(3_000_000_000L * index));
        }

        if (file.Writer.Write() is { } trouble)
        {
            throw new IOException(trouble);
        }
    }
}
