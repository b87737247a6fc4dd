using System.Globalization;
using System.Text;
using WarmupConsole.App.Running;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.Architecture;
using WarmupConsole.Tests.Storage;

namespace WarmupConsole.Tests.Scenarios;

/// <summary>The demo's past weeks: ten simulated evenings before the two that are told mark by mark.</summary>
public sealed class DemoSeasonTests : IDisposable
{
    private static readonly string Root = Path.Combine(Repository.Root, "plans-demo");

    /// <summary>Each evening with the demo plan whose steps were sung.</summary>
    private static readonly (string Day, string Plan)[] Evenings =
    [
        ("2026-11-10", "2027-02-16"), ("2026-11-17", "2027-02-02"), ("2026-11-24", "2027-02-16"), ("2026-12-01", "2027-02-16"), ("2026-12-08", "2027-02-09"),
        ("2026-12-15", "2027-02-16"), ("2027-01-05", "2027-02-16"), ("2027-01-12", "2027-02-16"), ("2027-01-19", "2027-02-09"), ("2027-01-26", "2027-02-16"),
    ];

    private readonly TemporaryFolder _folder = new();
    private readonly ChoirFolder _choir;

    public DemoSeasonTests() => _choir = ChoirFolder.Open(Root, new SettingsFolder(_folder.PathOf("settings"))).Value!;

    public void Dispose() => _folder.Dispose();

    /// <summary>The logs in plans-demo are those of the simulated director; WARMUP_ACCEPT=1 puts them there.</summary>
    [Fact]
    public void The_past_weeks_of_the_demo_are_simulated_evenings()
    {
        foreach ((int index, (string day, string plan)) in Evenings.Index())
        {
            string made = Write(day, plan, index);
            string kept = Path.Combine(Root, "sessions", Path.GetFileName(made));
            if (Environment.GetEnvironmentVariable("WARMUP_ACCEPT") == "1")
            {
                File.Copy(made, kept, overwrite: true);
            }

            Assert.True(File.Exists(kept), $"{kept} is missing; WARMUP_ACCEPT=1 makes it.");
            Assert.Equal(Facts(made), Facts(kept));
        }
    }

    [Fact]
    public void The_review_of_the_demo_finds_the_hidden_weakness_and_the_range_that_grew()
    {
        SeasonReview review = SeasonReview.Of(_choir);
        Assert.Equal("altos flat on A4", FindingText.Title(review.Findings[0], review.Choir));
        RangeAdvice advice = Assert.Single(review.Ranges);
        Assert.Equal("comfortable top of the tenors: F4 to G♭4", FindingText.Title(advice, review.Choir));
        Assert.Empty(review.LeftOut);
        Assert.True(review.Sessions.Count >= 10, $"{review.Sessions.Count} sessions");
    }

    private static IEnumerable<string> Facts(string path) => SessionLogFile.Read(path).Value!.Records.Select(record => record.Event).Select(fact => fact switch
    {
        RungStarted rung => $"{rung.Step}/{rung.Rung} {rung.Tonic} {string.Join(' ', rung.Sing)}",
        MarkMade mark => $"{mark.Step}/{mark.Rung} {mark.Raw}",
        _ => "",
    }).Where(fact => fact.Length > 0);

    private string Write(string day, string planName, int index)
    {
        LoadedPlan loaded = _choir.ReadPlan(Path.Combine(Root, "plans", planName + ".yaml")).Value!;
        string yaml = loaded.Yaml.Replace($"date: {planName}", $"date: {day}", StringComparison.Ordinal);
        Plan plan = PlanFile.Read(day, Encoding.UTF8.GetBytes(yaml), _choir.Context).Value!;
        Warmup warmup = WarmupBuilder.Build(_choir.Choir, plan, _choir.Exercises.ToDictionary(exercise => exercise.Id));
        IEnumerable<Exercise> used = warmup.Steps.Select(step => step.Exercise).DistinctBy(exercise => exercise.Id);
        RunStarted start = new("simulated", _choir.Choir.Name, day + ".yaml", _choir.ChoirYaml, yaml, ExerciseFile.Write(used));
        DateTimeOffset at = DateTimeOffset.ParseExact(day + " 19:30 +00:00", "yyyy-MM-dd HH:mm zzz", CultureInfo.InvariantCulture);
        using SessionLogFile log = SessionLogFile.Create(_folder.PathOf("sessions"), at, "test").File!;
        log.Writer.Add(start, at, default);
        foreach ((Moment moment, SessionEvent fact) in DemoEvening.Lead(warmup, 20_261_110 + index))
        {
            log.Writer.Add(fact, at.AddTicks(moment.Nanoseconds / 100), moment);
        }

        Assert.Null(log.Writer.Write());
        return log.Path;
    }
}
