using System.Collections.Concurrent;
using System.Text;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Tests.Storage.Yaml;

/// <summary>
/// Files of every kind spoilt at random, each from its seed: they may be read or refused, but nothing may be thrown, nothing may hang, and
/// what is read must serve. WARMUP_MUTATIONS says how many, WARMUP_MUTATION spoils one alone.
/// </summary>
public sealed class MutatedFilesTests
{
    private const int Usual = 10_000;

    /// <summary>A single file takes well under a second; this is for one that never ends.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    [Fact]
    public void A_spoilt_file_is_read_or_refused() => Spoil(SpoiltFile.Kinds, Number("WARMUP_MUTATIONS") ?? Usual, 0.5);

    /// <summary>Half as many scores; many of them are whole all the same, for a score says much that nobody needs.</summary>
    [Fact]
    public void A_spoilt_score_is_read_or_refused() => Spoil(SpoiltScore.Kinds, (Number("WARMUP_MUTATIONS") ?? Usual) / 2, 0.2);

    private static void Spoil(IReadOnlyList<SpoiltFile> kinds, int files, double leastSpoilt)
    {
        if (Number("WARMUP_MUTATION") is { } alone)
        {
            Assert.Null(Fault(Spoil(kinds, alone), alone, []));
            return;
        }

        Counts counts = [];
        ConcurrentQueue<string> faults = [];
        int next = -1;
        Worker[] workers = [.. Enumerable.Range(0, Environment.ProcessorCount).Select(_ => new Worker(worker =>
        {
            while (faults.IsEmpty && Interlocked.Increment(ref next) is int seed && seed < files)
            {
                worker.Seed = seed;
                if (Fault(Spoil(kinds, seed), seed, counts) is { } fault)
                {
                    faults.Enqueue(fault);
                }
            }
        }))];
        foreach (Worker worker in workers)
        {
            worker.Join(Patience);
        }

        Assert.True(faults.IsEmpty, string.Join("\n\n", faults));
        Assert.Equal(files, counts.Values.Sum());
        Assert.All(kinds, kind => Assert.True(counts.GetValueOrDefault((kind.Name, true)) > 0 && counts.GetValueOrDefault((kind.Name, false)) > 0, $"{kind.Name}: never read, or never refused"));
        Assert.True(counts.Where(count => !count.Key.IsGood).Sum(count => count.Value) > files * leastSpoilt, "Too few files are spoilt.");
    }

    [Fact]
    public void The_same_seed_spoils_a_file_in_the_same_way() => Assert.Equal(Spoil(SpoiltFile.Kinds, 11).Bytes, Spoil(SpoiltFile.Kinds, 11).Bytes);

    [Fact]
    public void A_fault_is_told_with_its_seed_and_the_file()
    {
        SpoiltFile broken = new("a file that breaks", ["format: 1\n"], _ => throw new InvalidOperationException("broken"));
        string told = Fault((broken, Encoding.UTF8.GetBytes("format: 1\n")), 12, [])!;
        Assert.StartsWith("reproduce with WARMUP_MUTATION=12: a file that breaks: System.InvalidOperationException: broken", told, StringComparison.Ordinal);
        Assert.EndsWith("format: 1\n", told, StringComparison.Ordinal);
    }

    private static (SpoiltFile Kind, byte[] Bytes) Spoil(IReadOnlyList<SpoiltFile> kinds, int seed)
    {
        Random random = new(seed);
        SpoiltFile kind = kinds[seed % kinds.Count];
        Mutator mutator = new(random);
        return (kind, kind.Packed.Length > 0 ? mutator.Spoil(kind.Packed[random.Next(kind.Packed.Length)]) : mutator.Spoil(kind.Samples[random.Next(kind.Samples.Length)]));
    }

    private static string? Fault((SpoiltFile Kind, byte[] Bytes) file, int seed, Counts counts)
    {
        try
        {
            IReadOnlyList<FileProblem> problems = file.Kind.Use(file.Bytes);
            Assert.All(problems, problem => Assert.DoesNotContain(problem.ToString(), c => Printable.IsForbidden(c) && c != '\n'));
            counts.AddOrUpdate((file.Kind.Name, problems.Count == 0), 1, (_, count) => count + 1);
            return null;
        }
#pragma warning disable CA1031 // Whatever is thrown is what is looked for.
        catch (Exception fault)
#pragma warning restore CA1031
        {
            return $"reproduce with WARMUP_MUTATION={seed}: {file.Kind.Name}: {fault}\n{Encoding.UTF8.GetString(file.Bytes)}";
        }
    }

    private static int? Number(string variable) => int.TryParse(Environment.GetEnvironmentVariable(variable), out int number) ? number : null;

    /// <summary>How many files of a kind were good, and how many were refused.</summary>
    private sealed class Counts : ConcurrentDictionary<(string Kind, bool IsGood), int>;

    /// <summary>A thread that says which file it is at, so that one which never ends is told.</summary>
    private sealed class Worker
    {
        private readonly Thread _thread;
        private volatile int _seed;

        internal Worker(Action<Worker> work)
        {
            _thread = new(() => work(this)) { IsBackground = true };
            _thread.Start();
        }

        internal int Seed
        {
            get => _seed;
            set => _seed = value;
        }

        internal void Join(TimeSpan patience)
        {
            int before = -1;
            while (!_thread.Join(patience))
            {
                Assert.True(Seed != before, $"reproduce with WARMUP_MUTATION={Seed}: it does not end");
                before = Seed;
            }
        }
    }
}
