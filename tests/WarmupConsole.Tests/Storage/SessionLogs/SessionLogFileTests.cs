using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Tests.Storage.SessionLogs;

public sealed class SessionLogFileTests : IDisposable
{
    private const string Machine = "quay";

    private readonly TemporaryFolder folder = new();

    private string LogPath => folder.PathOf("sessions", "2027-02-16T19-30-05.jsonl");

    private string LockPath => folder.PathOf("sessions", "2027-02-16T19-30-05.lock");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void A_new_log_stands_under_the_time_of_its_start_with_a_lock_until_it_is_closed()
    {
        using (SessionLogFile file = Create().File!)
        {
            Assert.Equal(LogPath, file.Path);
            Assert.True(File.Exists(LockPath));
        }

        Assert.False(File.Exists(LockPath));
        Assert.False(Create().IsOpen);
    }

    [Fact]
    public void A_held_log_is_refused_and_read_all_the_same()
    {
        using SessionLogFile file = Create().File!;
        LogSamples.Add(file.Writer, LogSamples.Start);
        Assert.Null(file.Writer.Flush());
        OpenedLog second = SessionLogFile.OpenForResume(LogPath, Machine);
        Assert.Equal((false, LogTexts.Busy), (second.IsOpen, second.Sentence));
        Assert.Single(SessionLogFile.Read(LogPath).Value!.Records);
    }

    [Theory]
    [InlineData("12345 quay\n")]
    [InlineData("")]
    [InlineData("\u0000\u0001 no lock at all")]
    public void A_lock_that_nobody_holds_is_taken_over(string text)
    {
        WriteLog(LogSamples.Log(LogSamples.Start));
        File.WriteAllText(LockPath, text);
        using SessionLogFile? file = SessionLogFile.OpenForResume(LogPath, Machine).File;
        Assert.NotNull(file);
    }

    [Fact]
    public void A_lock_brought_from_another_machine_is_refused_with_the_remedy()
    {
        WriteLog(LogSamples.Log(LogSamples.Start));
        File.WriteAllText(LockPath, "12345 ferry\n");
        Assert.Equal(LogTexts.ForeignLock("ferry"), SessionLogFile.OpenForResume(LogPath, Machine).Sentence);
        Assert.True(File.Exists(LockPath));
    }

    [Fact]
    public void A_run_that_was_cut_off_goes_on_in_the_same_file_with_a_new_epoch()
    {
        byte[] whole = LogSamples.Log(LogSamples.Start, LogSamples.Mark, new RungEnded(0, 0, true));
        WriteLog(whole[..^10]);
        OpenedLog opened = SessionLogFile.OpenForResume(LogPath, Machine);
        Assert.Equal(LogTexts.ResumedTorn, opened.Sentence);
        using (SessionLogFile file = opened.File!)
        {
            LogSamples.Add(file.Writer, new RunResumed(0, 0));
            Assert.Null(file.Writer.Flush());
        }

        SessionLog log = SessionLogFile.Read(LogPath).Value!;
        Assert.Equal([(1, 1), (2, 1), (3, 2)], log.Records.Select(record => ((int)record.Sequence, record.Epoch)));
        Assert.Equal(DamageKind.CutOff, Assert.Single(log.Damages).Kind);
    }

    [Fact]
    public void Finished_empty_missing_and_newer_logs_are_refused_in_words_and_left_alone()
    {
        Assert.Equal(LogTexts.Finished, Refusal(LogSamples.Log(LogSamples.Start, new RunEnded("ended"))));
        Assert.Equal(LogTexts.NoStart, Refusal([]));
        Assert.Equal(LogTexts.NoStart, Refusal(LogSamples.Log(new MarkUndone(1))));
        Assert.False(SessionLogFile.OpenForResume(folder.PathOf("sessions", "none.jsonl"), Machine).IsOpen);
        Assert.Equal(["2027-02-16T19-30-05.jsonl"], Directory.GetFiles(folder.PathOf("sessions")).Select(Path.GetFileName));
    }

    [Fact]
    public void Damage_inside_is_told_when_the_run_goes_on()
    {
        byte[] spoilt = LogSamples.Log(LogSamples.Start, LogSamples.Mark, new MarkUndone(1));
        spoilt[LogSamples.LineEnds(spoilt)[0] + 30] ^= 1;
        WriteLog(spoilt);
        OpenedLog opened = SessionLogFile.OpenForResume(LogPath, Machine);
        opened.File!.Dispose();
        Assert.Equal(LogTexts.ResumedDamaged(1), opened.Sentence);
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_a_sentence()
    {
        string blocked = Path.Combine(folder.Write("", "file"), "sessions");
        OpenedLog opened = SessionLogFile.Create(blocked, LogSamples.Evening, Machine);
        Assert.False(opened.IsOpen);
        Assert.StartsWith("it cannot be written: ", opened.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Exactly_one_row_of_the_table_fits_any_log()
    {
        for (int bits = 0; bits < 64; bits++)
        {
            bool Bit(int number) => (bits & (1 << number)) != 0;
            LogCondition condition = new(Bit(0), Bit(1), Bit(2), Bit(3), Bit(4), Bit(5));
            Assert.Single(ResumeTable.Rows, row => row.Fits(condition));
        }
    }

    [Theory]
    [InlineData(true, false, true, false, false, false, ResumeVerdict.RefuseHeld)]
    [InlineData(false, true, true, true, true, true, ResumeVerdict.RefuseNewer)]
    [InlineData(false, false, false, true, true, true, ResumeVerdict.RefuseWithoutStart)]
    [InlineData(false, false, true, true, true, true, ResumeVerdict.RefuseFinished)]
    [InlineData(false, false, true, false, true, true, ResumeVerdict.ResumeDespiteDamage)]
    [InlineData(false, false, true, false, false, true, ResumeVerdict.ResumeAfterTornTail)]
    [InlineData(false, false, true, false, false, false, ResumeVerdict.Resume)]
    public void The_table_decides_as_specified(bool held, bool newer, bool start, bool finished, bool damaged, bool torn, ResumeVerdict verdict) =>
        Assert.Equal(verdict, ResumeTable.Decide(new(held, newer, start, finished, damaged, torn)));

    private OpenedLog Create() => SessionLogFile.Create(folder.PathOf("sessions"), LogSamples.Evening, Machine);

    private string Refusal(byte[] log)
    {
        WriteLog(log);
        OpenedLog opened = SessionLogFile.OpenForResume(LogPath, Machine);
        Assert.False(opened.IsOpen);
        Assert.Equal(log, File.ReadAllBytes(LogPath));
        return opened.Sentence;
    }

    private void WriteLog(byte[] bytes)
    {
        Directory.CreateDirectory(folder.PathOf("sessions"));
        File.WriteAllBytes(LogPath, bytes);
    }
}
