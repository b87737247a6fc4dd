using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.SessionLogs;

namespace WarmupConsole.App.Running;

/// <summary>A run that was cut off, rebuilt from nothing but its log.</summary>
/// <param name="Path">The log.</param>
/// <param name="Warmup">Made from what the log keeps.</param>
/// <param name="Facts">Where it was.</param>
/// <param name="Spent">Time spent until then, in the whole and in the step.</param>
internal sealed record CutOffRun(string Path, Warmup Warmup, SessionFacts Facts, (TimeSpan Whole, TimeSpan Step) Spent)
{
    // An evening's rehearsal: after that nobody means to go on with the same warm-up.
    private static readonly TimeSpan StillTonight = TimeSpan.FromHours(6);

    /// <summary>The newest log of the folder, if it was cut off this evening with this plan; else null.</summary>
    internal static CutOffRun? Find(ChoirFolder folder, string planName, DateTimeOffset now)
    {
        if (folder.SessionPaths.Count == 0 || SessionLogFile.Read(folder.SessionPaths[^1]).Value is not { } log)
        {
            return null;
        }

        return log is { IsFinished: false, Start: { } start } && start.PlanName == planName && now - log.Records[^1].At < StillTonight
            ? Rebuild(folder.SessionPaths[^1], log, start)
            : null;
    }

    internal string Question()
    {
        WarmupStep step = Warmup.Steps[Facts.StepIndex];
        string key = Facts.RungIndex < Facts.Keys.Count ? KeyName(step, Facts.Keys[Facts.RungIndex]) : "";
        return AppTexts.CutOff(Facts.StepIndex + 1, step.Exercise.Title, key);
    }

    /// <summary>Null when the log tells of no run to go on with.</summary>
    internal static CutOffRun? Rebuild(string path, SessionLog log, RunStarted start)
    {
        SessionFacts facts = SessionFacts.Fold(log.Records.Select(record => record.Event));
        if (facts is not { HasBegun: true, HasEnded: false } || LoggedContent.Read(start, log.Records) is not { } content || PlanOf(start, content) is not { } plan)
        {
            return null;
        }

        Warmup planned = WarmupBuilder.Build(content.Choir, plan, content.Exercises);
        Warmup warmup = WarmupBuilder.For(facts.Tonight, planned with { Steps = [.. planned.Steps, .. content.PutIn(log.Records)] });
        return facts.Order.Append(facts.StepIndex).All(step => step >= 0 && step < warmup.Steps.Count)
            ? new(path, warmup, facts, (TimeOf(log.Records, content), TimeOf(log.Records, content) - TimeOf(UntilStep(log.Records), content)))
            : null;
    }

    private static TimeSpan TimeOf(IReadOnlyList<SessionRecord> records, LoggedContent content) =>
        SessionReview.From(records, content.Choir, content.Exercises).Spent;

    /// <summary>Up to the last introduction, where the step's clock began; a pause may have begun before it, so what comes after is not told by itself.</summary>
    private static IReadOnlyList<SessionRecord> UntilStep(IReadOnlyList<SessionRecord> records) =>
        [.. records.Take(records.Index().Last(record => record.Item.Event is StepStarted).Index + 1)];

    /// <summary>An open run has a plan without steps; null for one that cannot be read any more.</summary>
    private static Plan? PlanOf(RunStarted start, LoggedContent content) =>
        start.PlanYaml.Length > 0 ? content.Plan : new() { Title = AppTexts.OpenTitle, Steps = [] };

    private string KeyName(WarmupStep step, int midi) =>
        step.Ladder.Rungs.FirstOrDefault(rung => rung.Tonic.Midi == midi) is { } rung ? $" in {Warmup.Choir.Notes.WriteName(rung.Tonic)}" : "";
}
