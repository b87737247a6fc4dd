using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.Decisions;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>Everything in a choir's folder that the next plan is made from.</summary>
internal sealed class PlannerSources
{
    private const int TalkStepSeconds = 5;
    private const int LeastTalkSeconds = 10;
    private const int MostTalkSeconds = 90;
    private const int SessionsOfTalk = 4;

    private readonly ChoirFolder _folder;
    private readonly IReadOnlyList<SungSession> _sessions;
    private readonly IReadOnlyList<ChoirNeed> _needs;
    private readonly IReadOnlyDictionary<string, Decision> _dismissed;

    private PlannerSources(ChoirFolder folder, LastSession? last, NeedsBook needs)
    {
        (_folder, Last, _needs) = (folder, last, needs.Needs);
        SeasonLogs logs = folder.SessionPaths.Count == 0 ? new([], []) : SeasonLogs.Load(folder, SeasonLogs.UsualWeeks);
        FileRead<IReadOnlyList<Decision>> decisions = DecisionsFile.Load(folder);
        (_sessions, _dismissed) = (logs.Sessions, DecisionsFile.Dismissed(decisions.Value ?? []));
        FileRead<LoadedPlan>[] read = [.. folder.PlanPaths.Select(folder.ReadPlan)];
        Plans = [.. read.Select(one => one.Value?.Plan).OfType<Plan>().OrderBy(plan => plan.Date)];
        LeftOut = [.. logs.LeftOut, .. read.SelectMany(one => one.Problems).Select(problem => AppTexts.EarlierUnread(problem.Headline)), .. decisions.Problems.Select(problem => problem.ToString())];
    }

    /// <summary>The newest log, or null when there is none.</summary>
    internal LastSession? Last { get; }

    /// <summary>All plans that can be read, the oldest first; those without a date before the others.</summary>
    internal IReadOnlyList<Plan> Plans { get; }

    /// <summary>What was not weighed, in sentences.</summary>
    internal IReadOnlyList<string> LeftOut { get; }

    internal static FileRead<PlannerSources> Load(ChoirFolder folder)
    {
        FileRead<LastSession> last = folder.SessionPaths.Count == 0 ? new(null, []) : LastSession.Newest(folder);
        FileRead<NeedsBook> needs = NeedsBook.Open(folder);
        return last.Problems.Count > 0 || !needs.IsGood ? new(null, [.. last.Problems, .. needs.Problems]) : new(new(folder, last.Value, needs.Value), []);
    }

    /// <summary>The plan that was led last, else the newest one; a bare rehearsal and an open run have no steps to compare with.</summary>
    internal Plan? PlanToCarryOn() => new[] { Last?.Content.Plan }.Concat(Plans.Reverse()).FirstOrDefault(plan => plan is { Steps.Count: > 0 });

    /// <summary>What was known before a day.</summary>
    /// <param name="date">The day that is planned.</param>
    /// <param name="last">The plan to compare with, or null.</param>
    internal NextPlanInput Before(DateOnly date, Plan? last)
    {
        SungSession[] sessions = [.. _sessions.Where(session => DayOf(session.Start) < date)];
        return new()
        {
            Choir = _folder.Choir,
            Last = last,
            Earlier = [.. Plans.Where(plan => plan.Steps.Count > 0 && plan.Date is { } day && day < (last?.Date ?? date))],
            Exercises = _folder.Exercises.ToDictionary(exercise => exercise.Id),
            Review = Last is { } session && DayOf(session.Review.Start) < date ? session.Review : null,
            Findings = FindingsIn(sessions),
            Needs = _needs,
            Led = [.. sessions.Select(session => new LedSession(DayOf(session.Start), session.Exercises))],
            LearntTalk = Talk(date),
            Date = date,
        };
    }

    private IReadOnlyList<Finding> FindingsIn(SungSession[] sessions) =>
        sessions.Length == 0 ? [] : [.. ChoirFindings.From(sessions, _folder.Choir).Findings.Where(finding => !_dismissed.ContainsKey(finding.Id))];

    /// <summary>Seconds of talk that an exercise took in the last sessions: the longest but one of four is no exception any more.</summary>
    private Dictionary<string, int> Talk(DateOnly date) => _folder.SessionPaths.TakeLast(SessionsOfTalk)
        .Select(path => LastSession.Load(path).Value?.Review).OfType<SessionReview>().Where(review => DayOf(review.Start) < date)
        .SelectMany(review => review.Steps).Where(step => step.HasWork && step.Talk > TimeSpan.Zero)
        .GroupBy(step => step.ExerciseId).Where(steps => steps.Count() > 1)
        .ToDictionary(steps => steps.Key, steps => Rounded(steps.Select(step => step.Talk.TotalSeconds).Order().ElementAt(steps.Count() / 2)));

    private static int Rounded(double seconds) =>
        Math.Clamp((int)Math.Ceiling(seconds / TalkStepSeconds) * TalkStepSeconds, LeastTalkSeconds, MostTalkSeconds);

    private static DateOnly DayOf(DateTimeOffset start) => DateOnly.FromDateTime(start.DateTime);
}
