using System.IO.Hashing;
using System.Text;
using WarmupConsole.App;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Tests.Sessions.Findings;
using WarmupConsole.Tests.Sessions.Findings.Seasons;

namespace WarmupConsole.Tests.App;

/// <summary>Whatever lies in the sessions folder, the review uses what it can and says at its end what it could not.</summary>
public sealed class BadLogsTests : IDisposable
{
    private static readonly Season Season = SeasonSimulator.Make(new(1001, 4, 1, 0.40));

    private readonly CommandRun _run = new();
    private readonly IReadOnlyList<string> _logs;

    public BadLogsTests() => _logs = SeasonFolder.Write(_run.Folder, Season);

    public void Dispose() => _run.Dispose();

    [Fact]
    public void A_torn_end_and_a_changed_line_are_counted()
    {
        byte[] bytes = File.ReadAllBytes(_logs[0]);
        bytes[bytes.AsSpan().IndexOf("rung-started"u8)] ^= 1;
        File.WriteAllBytes(_logs[0], bytes[..^40]);
        string name = Path.GetFileName(_logs[0]);
        AssertLeftOut($"{name}: 1 place not read: the line does not match its checksum: it was changed.");
        AssertLeftOut($"{name}: 1 place not read: the last record was cut off while it was written.");
    }

    [Fact]
    public void A_log_of_a_newer_version_says_so()
    {
        File.WriteAllText(_logs[1], Sealed("{\"format\":2,\"seq\":1,\"type\":\"run-started\"") + "\n");
        AssertLeftOut($"{Path.GetFileName(_logs[1])}: 1 place not read: the record was written by a newer version; update the program.");
        AssertLeftOut($"{Path.GetFileName(_logs[1])}: left out. {AppTexts.NoStart}");
    }

    [Fact]
    public void An_empty_file_a_folder_and_a_picture_are_left_out()
    {
        File.WriteAllText(_run.Folder.PathOf("sessions", "empty.jsonl"), "");
        File.WriteAllBytes(_run.Folder.PathOf("sessions", "picture.jsonl"), [0x89, 0x50, 0x4E, 0x47, 0, 0, 0, 0, 10, 255, 10, 10]);
        AssertLeftOut($"empty.jsonl: left out. {AppTexts.NoStart}");
        AssertLeftOut("picture.jsonl: ");
    }

    [Fact]
    public void A_copy_of_a_run_counts_once_and_the_longer_one()
    {
        string copy = _run.Folder.PathOf("sessions", "2027-01-12T19-30-00 (conflicted copy).jsonl");
        string[] lines = File.ReadAllLines(_logs[0]);
        File.WriteAllLines(copy, lines[..^20]);
        AssertLeftOut($"{Path.GetFileName(copy)}: left out, because it is a copy of the same run as {Path.GetFileName(_logs[0])}.");
        Assert.Contains("What 4 sessions show", _run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_different_runs_of_one_minute_both_count()
    {
        SessionRecord[] other = [.. SeasonSimulator.Make(new(77, 1, 0, 0)).Logs[0].Select(record => record with { At = record.At.AddSeconds(1) })];
        SeasonFolder.Write(_run.Folder.PathOf("sessions"), other);
        Assert.Equal(ExitCodes.Ok, _run.Type("review"));
        Assert.Contains("What 5 sessions show", _run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clock_set_back_is_told_and_the_lengths_hold()
    {
        SessionRecord[] back = [.. SeasonSimulator.Make(new(78, 1, 0, 0)).Logs[0].Select((record, i) => i < 50 ? record : record with { At = record.At.AddHours(-3) })];
        string path = SeasonFolder.Write(_run.Folder.PathOf("sessions"), [.. back.Select(record => record with { At = record.At.AddDays(90) })]);
        AssertLeftOut($"{Path.GetFileName(path)}: the computer's clock was set back while it ran");
    }

    [Fact]
    public void An_exercise_that_the_log_does_not_hold_counts_by_its_ends()
    {
        SessionRecord[] log = [.. SeasonSimulator.Make(new(79, 1, 0, 0)).Logs[0].Select(record => record with { At = record.At.AddDays(90) })];
        log[0] = log[0] with { Event = (RunStarted)log[0].Event with { ExercisesYaml = "" } };
        string path = SeasonFolder.Write(_run.Folder.PathOf("sessions"), log);
        AssertLeftOut($"{Path.GetFileName(path)}: the exercise of ");
    }

    [Fact]
    public void A_part_that_was_renamed_is_told_with_what_it_sang()
    {
        _run.Folder.Write(SeasonChoir.Yaml.Replace("id: alto", "id: low-women", StringComparison.Ordinal), "choir.yaml");
        AssertLeftOut("alto: not a part of the choir now, ");
    }

    [Fact]
    public void Ten_thousand_files_of_nothing_are_no_reason_to_fail()
    {
        for (int i = 0; i < 10_000; i++)
        {
            File.WriteAllText(_run.Folder.PathOf("sessions", $"x{i:00000}.jsonl"), "\n");
        }

        // The newest log is one of them, so the last session cannot be told; the season can.
        Assert.Equal(ExitCodes.BadInput, _run.Type("review"));
        Assert.Contains("What 4 sessions show", _run.Output, StringComparison.Ordinal);
        Assert.Equal(10_000, _run.Output.Split('\n').Count(line => line.EndsWith(AppTexts.NoStart, StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Random_damage_never_ends_in_a_fault(int seed)
    {
        Random random = new(seed);
        foreach (string path in _logs)
        {
            byte[] bytes = File.ReadAllBytes(path);
            for (int i = 0; i < 30; i++)
            {
                bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            }

            File.WriteAllBytes(path, bytes[..random.Next(bytes.Length / 2, bytes.Length)]);
        }

        Assert.NotEqual(ExitCodes.Internal, _run.Type("review"));
        Assert.Contains("\nLeft out\n   2027-", _run.Output, StringComparison.Ordinal);
    }

    private static string Sealed(string body) =>
        $"{body},\"crc\":\"{Crc32.HashToUInt32(Encoding.UTF8.GetBytes(body)):x8}\"}}";

    private void AssertLeftOut(string sentence)
    {
        Assert.NotEqual(ExitCodes.Internal, _run.Type("review"));
        string[] leftOut = _run.Output[_run.Output.LastIndexOf("\nLeft out\n", StringComparison.Ordinal)..].Split('\n');
        Assert.Contains(leftOut, line => line.StartsWith("   " + sentence, StringComparison.Ordinal));
    }
}
