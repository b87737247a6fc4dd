using System.Globalization;
using WarmupConsole.App.Running;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Benchmarks;

/// <summary>
/// Seasons of session logs on disk, read, checked and reviewed: one season of 30 evenings, ten years of 90 each, and two sizes between to show the
/// growth. Evenings differ in plan, in what is marked and when, and in the text of their exercises, as real ones do: one mark in about eight keys, and one in three where A4 to B4 is the altos' highest note.
/// </summary>
internal static class SeasonBenchmarks
{
    private const int Events = 400;
    private const int Samples = 15;

    private const double NanosecondsASecond = 1e9;

    private const int Weak = 69;

    private static readonly string[] Marks = ["a f", "s strained", "t f", "b late", "everyone uneven", "s sharp", "t breathy", "b good"];

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

    /// <summary>A run of one of the demo's plans, over and over until there are enough events; marks come up to two seconds later.</summary>
    private static void Write(string folder, DateTimeOffset start, int evening)
    {
        Random random = new(evening);
        Warmup warmup = DemoChoir.Warmups[evening % DemoChoir.Warmups.Count];
        (Moment At, SessionEvent Event)[] run = [.. DemoChoir.Run(warmup, Listening(random))];
        string exercises = ExerciseFile.Write(warmup.Steps.Select(step => step.Exercise));
        using SessionLogFile file = SessionLogFile.Create(folder, start, "here").File!;
        file.Writer.Add((RunStarted)run[0].Event with { ExercisesYaml = exercises + Another(evening) }, start, default);
        var events = Enumerable.Range(0, 10).SelectMany(round => run[1..^1].Select(fact => (At: fact.At + (round * (run[^1].At - default(Moment))), fact.Event)))
            .Take(Events - 2).ToArray();
        foreach ((Moment at, SessionEvent fact) in events.Append((At: events[^1].At, Event: run[^1].Event)))
        {
            SessionEvent later = fact is MarkMade made ? made with { Nanoseconds = at.Nanoseconds + (long)(2 * random.NextDouble() * NanosecondsASecond) } : fact;
            file.Writer.Add(later, start.AddTicks(at.Nanoseconds / 100), at);
        }

        if (file.Writer.Write() is { } trouble)
        {
            throw new IOException(trouble);
        }
    }

    private static Func<RungStarted, string?> Listening(Random random) => rung => random.NextDouble() switch
    {
        < 0.3 when rung.Sing.Contains("alto") && rung.High[rung.Sing.Index().First(part => part.Item == "alto").Index] is >= Weak and <= Weak + 2 => Marks[0],
        < 0.12 => Marks[random.Next(Marks.Length)],
        _ => null,
    };

    /// <summary>An exercise of this evening alone.</summary>
    private static string Another(int evening) => string.Create(CultureInfo.InvariantCulture, $$"""
          - id: evening-{{evening}}
            title: Evening {{evening}}
            stage: sung
            pattern: "1 2 3 2 1"
            syllables: "noo/u ~ ~ ~ ~"
            tempo: {default: 80, from: 60, to: 100}
        """) + "\n";
}
