using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Tests.Storage.SessionLogs;

public sealed class SessionLogWriterTests : IDisposable
{
    private readonly FaultyFile file = new();
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Numbers_count_up_and_a_flush_reaches_the_last()
    {
        using SessionLogWriter writer = New();
        LogSamples.Add(writer, LogSamples.Start, new MarkUndone(1));
        Assert.Equal((2, 0, true), (writer.LastSequence, writer.FlushedSequence, writer.HasUnflushed));
        Assert.Null(writer.Write());
        Assert.Equal((0, 0), (writer.FlushedSequence, file.Flushes));
        Assert.Null(writer.Flush());
        Assert.Equal((2, 1, false), (writer.FlushedSequence, file.Flushes, writer.HasUnflushed));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(40)]
    [InlineData(10_000)]
    public void What_a_failing_file_refused_is_written_with_the_next_try(int torn)
    {
        using SessionLogWriter writer = New();
        LogSamples.Add(writer, LogSamples.Start);
        Assert.Null(writer.Flush());
        (file.RefusesWrites, file.TornBytes) = (true, torn);
        LogSamples.Add(writer, LogSamples.Mark);
        Assert.Equal("No space left on device", writer.Flush());
        Assert.Equal(1, writer.FlushedSequence);
        file.RefusesWrites = false;
        LogSamples.Add(writer, new MarkUndone(1));
        Assert.Null(writer.Flush());
        SessionLog log = SessionLogReader.Read(file.AfterPowerCut);
        Assert.Equal([1, 2, 3], log.Records.Select(record => record.Sequence));
        Assert.All(log.Damages, damage => Assert.Equal(DamageKind.CutOff, damage.Kind));
    }

    [Fact]
    public void After_a_failed_flush_everything_since_the_last_good_one_is_written_again()
    {
        using SessionLogWriter writer = New();
        LogSamples.Add(writer, LogSamples.Start);
        Assert.Null(writer.Flush());
        LogSamples.Add(writer, LogSamples.Mark, new MarkUndone(1));
        file.RefusesFlush = true;
        Assert.Equal("Input/output error", writer.Flush());
        file.RefusesFlush = false;
        Assert.Null(writer.Flush());
        SessionLog log = SessionLogReader.Read(file.AfterPowerCut);
        Assert.Equal((3, 0), (log.Records.Count, log.Damages.Count));
    }

    [Fact]
    public void Everything_can_be_saved_elsewhere_while_the_file_fails()
    {
        using SessionLogWriter writer = New();
        file.RefusesWrites = true;
        LogSamples.Add(writer, LogSamples.Start, LogSamples.Mark);
        Assert.NotNull(writer.Flush());
        string path = folder.PathOf("rescue", "log.jsonl");
        Assert.Null(writer.SaveElsewhere(path));
        Assert.Equal(2, SessionLogFile.Read(path).Value!.Records.Count);
        Assert.Equal(StorageTexts.AlreadyThere, writer.SaveElsewhere(path));
    }

    [Fact]
    public void A_torn_tail_is_ended_by_a_newline_before_the_next_record()
    {
        byte[] before = [.. LogSamples.Log(LogSamples.Start), .. "{\"format\":1,\"se"u8];
        using SessionLogWriter writer = new(file, new(2, 2, before));
        LogSamples.Add(writer, new RunResumed(0, 0));
        Assert.Null(writer.Flush());
        Assert.Equal((byte)'\n', file.Bytes[0]);
        string path = folder.PathOf("whole.jsonl");
        Assert.Null(writer.SaveElsewhere(path));
        Assert.Equal([.. before, .. file.Bytes], File.ReadAllBytes(path));
        Assert.Equal([1, 2], SessionLogFile.Read(path).Value!.Records.Select(record => record.Epoch));
    }

    private SessionLogWriter New() => new(file, LogPosition.New);
}
