using System.Globalization;
using System.Security.Cryptography;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.Architecture;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>Everything in plans-demo works, and running it leaves it as it is.</summary>
public sealed class DemoTests
{
    private static readonly string Folder = Path.Combine(Repository.Root, "plans-demo");

    public static TheoryData<string> Plans => [.. FilesIn("plans")];

    public static TheoryData<string> SessionLogs => [.. FilesIn("sessions")];

    [Theory]
    [MemberData(nameof(Plans))]
    public void A_demo_plan_is_in_order_and_runs_to_its_end_without_writing_to_its_folder(string plan)
    {
        string before = Fingerprint();
        using Rehearsal room = new(plan);
        Assert.DoesNotContain(PlanCheck.Check(room.Content.Warmup), remark => remark.Severity == PlanSeverity.Error);
        room.Do(LiveAction.GoOn);
        while (room.Session.State != LiveState.Finished)
        {
            room.LeadToItsEnd();
        }

        Assert.Equal(room.Content.Warmup.Steps.Count, room.Logged.Count(record => record.Event is StepStarted));
        Assert.Equal(
            room.Content.Warmup.Steps.SelectMany(step => step.Ladder.Rungs.Select(rung => rung.Tonic.Midi)),
            room.Logged.Select(record => record.Event).OfType<RungStarted>().Select(rung => rung.Midi));
        Assert.IsType<RunEnded>(room.Logged[^1].Event);
        Assert.Empty(room.Sounding);
        Assert.Contains("It took", room.Screen, StringComparison.Ordinal);
        Assert.Equal(before, Fingerprint());
    }

    [Fact]
    public void Every_demo_exercise_of_its_own_is_used_by_a_plan()
    {
        using Rehearsal room = new();
        string[] used = [.. FilesIn("plans").SelectMany(plan => room.Content.Folder.ReadPlan(Path.Combine(Folder, "plans", plan)).Value!.Plan.Steps).Select(step => step.ExerciseId)];
        Assert.Contains("bells-over-the-quay", used);
        Assert.Contains("ferry-crossing", used);
    }

    [Theory]
    [MemberData(nameof(SessionLogs))]
    public void A_demo_session_log_is_whole_and_can_be_reviewed(string log)
    {
        LastSession session = LastSession.Load(Path.Combine(Folder, "sessions", log)).Value!;
        Assert.Empty(session.Damages);
        Assert.Equal("finished", session.Review.Ending);
        Assert.NotEmpty(session.Review.Marks);
        Assert.NotEmpty(ReviewText.Write(session.Review, session.Content.Choir));
    }

    /// <summary>The demo's past sessions are made here, by the console itself; WARMUP_ACCEPT=1 puts them into plans-demo.</summary>
    /// <param name="plan">The plan that is led.</param>
    /// <param name="typed">Step and key from 1, and what is typed there.</param>
    [Theory]
    [InlineData("2027-02-02.yaml", "5/3 b breathy;6/5 altos flat in E;7/4 t strained at the top;8/2 s good")]
    [InlineData("2027-02-09.yaml", "4/2 everyone late;7/5 altos flat;7/6 a f in E;10/5 altos flat on G;11/5 tenors strained at the top;11/6 s shining;12/2 the room is cold")]
    public void The_past_sessions_of_the_demo_are_runs_of_its_plans(string plan, string typed)
    {
        using Rehearsal room = new(plan);
        ILookup<int, (int Key, string Text)> marks = typed.Split(';').Select(Mark).ToLookup(mark => mark.Step, mark => (mark.Key, mark.Text));
        room.Do(LiveAction.GoOn);
        while (room.Session.State != LiveState.Finished)
        {
            int step = room.Session.StepIndex;
            room.Pass(TimeSpan.FromSeconds(room.Session.Step!.TalkSeconds)).Do(LiveAction.GoOn);
            foreach ((int key, string text) in marks[step + 1])
            {
                room.LeadToRung(key - 1).Type(text).Do(ScreenCommand.KeepMark);
            }

            room.RestOfStep();
        }

        SessionLog log = SessionLogFile.Read(room.LogPath!).Value!;
        Assert.Equal(typed.Split(';').Select(mark => Mark(mark).Text), log.Records.Select(record => record.Event).OfType<MarkMade>().Select(made => made.Raw));
        if (Environment.GetEnvironmentVariable("WARMUP_ACCEPT") == "1")
        {
            Directory.CreateDirectory(Path.Combine(Folder, "sessions"));
            File.Copy(room.LogPath!, Path.Combine(Folder, "sessions", Path.GetFileName(room.LogPath!)), overwrite: true);
        }
    }

    private static (int Step, int Key, string Text) Mark(string text)
    {
        string[] parts = text.Split(['/', ' '], 3);
        return (int.Parse(parts[0], CultureInfo.InvariantCulture), int.Parse(parts[1], CultureInfo.InvariantCulture), parts[2]);
    }

    private static IEnumerable<string> FilesIn(string name) =>
        Directory.EnumerateFiles(Path.Combine(Folder, name)).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal);

    private static string Fingerprint() => string.Join('\n', Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories)
        .Order(StringComparer.Ordinal)
        .Select(path => $"{path} {Convert.ToHexString(SHA256.HashData(File.ReadAllBytes(path)))}"));
}
