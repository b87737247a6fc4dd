using System.CommandLine;
using WarmupConsole.App;
using WarmupConsole.App.Running;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.Storage.SessionLogs;

namespace WarmupConsole.Tests.App.Running;

/// <summary>A log that no disk has, after the screen has closed.</summary>
public class LogRescueTests
{
    [Fact]
    public void It_asks_until_the_log_is_saved()
    {
        using TemporaryLog log = new();
        string[] bad = [.. Enumerable.Repeat(log.InAFile, 7)];
        string good = Path.Combine(log.Folder, "saved.jsonl");

        Assert.True(log.Rescue([.. bad, good]));
        Assert.Equal(bad.Length, log.Errors.Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Equal(2, SessionLogReader.Read(File.ReadAllBytes(good)).Records.Count);
    }

    [Fact]
    public void Only_n_drops_it()
    {
        using TemporaryLog log = new();
        Assert.True(log.Rescue([log.InAFile, "n"]));
        Assert.Empty(Directory.GetFiles(log.Folder, "*.jsonl"));
    }

    [Fact]
    public void With_nobody_there_it_is_saved_where_it_was_proposed_to()
    {
        using TemporaryLog log = new();
        Assert.True(log.Rescue(null));
        string saved = log.Output.Trim().Split("Session log: ")[^1];
        Assert.Equal(2, SessionLogReader.Read(File.ReadAllBytes(saved)).Records.Count);
        File.Delete(saved);
    }

    private sealed class TemporaryLog : IDisposable
    {
        private readonly StringWriter _output = new();
        private readonly StringWriter _errors = new();

        internal string Folder { get; } = Directory.CreateTempSubdirectory("warmup-rescue-").FullName;

        /// <summary>Where nothing can be saved: below a file.</summary>
        internal string InAFile
        {
            get
            {
                string file = Path.Combine(Folder, "file");
                File.WriteAllText(file, "");
                return Path.Combine(file, "log.jsonl");
            }
        }

        internal string Output => _output.ToString();

        internal string Errors => _errors.ToString();

        internal bool Rescue(string[]? answers)
        {
            using Desk desk = new(answers);
            Composition composition = desk.Composition;
            using RunLog log = new(new SessionLogWriter(new FaultyFile { RefusesWrites = true }, LogPosition.New), LogSamples.Start, composition.Wall, composition.Clock);
            log.Record(LogSamples.Mark);
            log.Thread.Drain();
            return new LogRescue(composition, new InvocationConfiguration { Output = _output, Error = _errors }).AfterRun(log);
        }

        public void Dispose() => Directory.Delete(Folder, recursive: true);
    }
}
