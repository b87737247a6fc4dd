using System.Diagnostics;
using System.Globalization;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.Tests.Storage.SessionLogs;

/// <summary>Real processes that are killed by force, and a real disk that is full.</summary>
public sealed class RealDiskTests : IDisposable
{
    private const int Kills = 25;
    private const string SmallDisk = "mount -t tmpfs -o size=64k warmup \"$WARMUP_LOG_CHILD\" && exec \"$@\"";

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(30);

    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Killed_by_force_at_any_moment_the_log_holds_every_mark_that_was_confirmed_and_can_be_gone_on_with()
    {
        Random random = new(11);
        int written = 0;
        for (int kill = 0; kill < Kills; kill++)
        {
            string folder = _folder.PathOf($"evening-{kill}");
            int confirmed = await KillAfter(folder, random.Next(1, 60), random.Next(20_000));
            string path = Assert.Single(Directory.GetFiles(folder, "*.jsonl"));
            SessionLog log = SessionLogFile.Read(path).Value!;

            int[] marks = [.. log.Records.Select(record => record.Event).OfType<MarkMade>().Select(mark => mark.Id)];
            Assert.Equal(Enumerable.Range(1, marks.Length), marks);
            Assert.True(marks.Length >= confirmed, $"{confirmed} marks were confirmed, {marks.Length} are there.");
            Assert.All(log.Damages, damage => Assert.True(damage.IsNormal));
            using SessionLogFile? resumed = SessionLogFile.OpenForResume(path, Environment.MachineName).File;
            Assert.NotNull(resumed);
            written += marks.Length;
        }

        Assert.True(written > Kills);
    }

    [Fact]
    public async Task On_a_disk_that_is_really_full_it_is_told_once_and_everything_can_be_saved_elsewhere()
    {
        string disk = Directory.CreateDirectory(_folder.PathOf("disk")).FullName;
        string elsewhere = _folder.PathOf("elsewhere.jsonl");
        string[] within = ["unshare", "-rm", "sh", "-c", SmallDisk, "sh"];
        Assert.SkipUnless(OperatingSystem.IsLinux() && await CanMount(disk), "No disk of a chosen size can be made here (unshare -rm, mount).");
        using Process child = LogChild.Start(disk, elsewhere, within);
        string[] said = (await child.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken).WaitAsync(Patience, TestContext.Current.CancellationToken)).Split('\n');

        Assert.Contains("No space left on device", Assert.Single(said, line => line.StartsWith(LogChild.Failed, StringComparison.Ordinal)), StringComparison.Ordinal);
        int marks = Number(Assert.Single(said, line => line.StartsWith(LogChild.Saved, StringComparison.Ordinal))[LogChild.Saved.Length..].Split(' ')[0]);
        Assert.Equal(Enumerable.Range(1, marks), SessionLogFile.Read(elsewhere).Value!.Records.Select(record => record.Event).OfType<MarkMade>().Select(mark => mark.Id));
        Assert.InRange(said.Count(line => line.StartsWith(LogChild.Confirmed, StringComparison.Ordinal)), 1, marks - 1);
    }

    /// <summary>Kills a log's process some turns after it has confirmed that many marks; gives how many it had confirmed.</summary>
    private static async Task<int> KillAfter(string folder, int marks, int turns)
    {
        using Process child = LogChild.Start(folder, "");
        int confirmed = 0;
        while (confirmed < marks)
        {
            confirmed = Of(await child.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken).AsTask().WaitAsync(Patience, TestContext.Current.CancellationToken));
        }

        Thread.SpinWait(turns);
        child.Kill();
        string rest = await child.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken).WaitAsync(Patience, TestContext.Current.CancellationToken);
        await child.WaitForExitAsync(TestContext.Current.CancellationToken).WaitAsync(Patience, TestContext.Current.CancellationToken);
        return rest.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(Of).Append(confirmed).Max();
    }

    private static async Task<bool> CanMount(string disk)
    {
        try
        {
            using Process tried = Process.Start(new ProcessStartInfo("unshare", ["-rm", "mount", "-t", "tmpfs", "-o", "size=64k", "warmup", disk]) { RedirectStandardError = true })!;
            await tried.WaitForExitAsync(TestContext.Current.CancellationToken).WaitAsync(Patience, TestContext.Current.CancellationToken);
            return tried.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    private static int Of(string? line)
    {
        Assert.StartsWith(LogChild.Confirmed, line, StringComparison.Ordinal);
        return Number(line![LogChild.Confirmed.Length..]);
    }

    private static int Number(string digits) => int.Parse(digits, CultureInfo.InvariantCulture);
}
