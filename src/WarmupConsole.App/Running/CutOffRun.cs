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
/// <param name="Spent">Time spent until then.</param>
internal sealed record CutOffRun(string Path, Warmup Warmup, SessionFacts Facts, TimeSpan Spent)
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
        return facts is { HasBegun: true, HasEnded: false } && LoggedContent.Read(start) is { Plan: { } plan } content && facts.StepIndex < plan.Steps.Count
            ? new(path, WarmupBuilder.Build(content.Choir, plan, content.Exercises), facts, SessionReview.From(log.Records, content.Choir, content.Exercises).Spent)
            : null;
    }

    private static string KeyName(WarmupStep step, int midi) =>
        step.Ladder.Rungs.FirstOrDefault(rung => rung.Tonic.Midi == midi) is { } rung ? $" in {rung.Tonic.Name}" : "";
}
