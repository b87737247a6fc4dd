using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Every sentence of a proposed plan: reasons, differences, and what could not be met.</summary>
internal static class NextPlanTexts
{
    private const int MostPurposes = 2;
    private const string Heard = "heard on ";
    private const string Asked = "asked for, ";

    internal static string UnknownExercise(string id) =>
        $"The last plan uses the exercise '{id}', which is neither in the catalogue nor among the choir's own: add it to exercises/ or take it out of the plan.";

    /// <summary>"heard on 16 February 2027, reached here from below and from above: altos flat in E (2 keys), ..."; the ladder is what answers them.</summary>
    internal static IReadOnlyList<string> Answers(IReadOnlyList<Need> needs)
    {
        string asked = string.Join("; ", needs.Where(need => need.IsAsked).Select(need => need.Words));
        string heard = string.Join(", ", needs.Where(need => !need.IsAsked).Select(need => $"{need.Words} ({Count(need.Rungs, "key")})"));
        string[] reasons =
        [
            heard.Length == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{Heard}{needs.First(need => !need.IsAsked).Date:d MMMM yyyy}, reached here from below and from above: {heard}"),
            asked.Length == 0 ? "" : $"{Asked}reached here from below and from above: {asked}",
        ];
        return [.. reasons.Where(reason => reason.Length > 0)];
    }

    /// <summary>True for the reason of a step that answers what was heard or asked for.</summary>
    internal static bool IsAnswer(string because) => because.StartsWith(Heard, StringComparison.Ordinal) || because.StartsWith(Asked, StringComparison.Ordinal);

    internal static string NoStepFor(Need need) =>
        $"{Evidence(need)}: no step could be found whose keys come to it from below and from above; plan one by hand.";

    internal static string NoKeyFor(Need need) => $"{Evidence(need)}: it belongs to no key, so no ladder answers it; think of it when you choose the step.";

    internal const string Held = "kept within the comfortable range: extremes belong to the last third (common practice)";

    internal static string Added(Stage stage) => $"added since {Order(stage)} (common practice)";

    internal static string Moved(Stage stage) => $"moved here since {Order(stage)} (common practice)";

    internal static string NotMended(string remark) => $"Nothing in the catalogue mends this: {remark}";

    /// <summary>"as on 9 February, for scale motion and legato"; a plan and a session without a day are "last time".</summary>
    internal static string Kept(DateOnly? day, IReadOnlyList<Purpose> purposes) => purposes.Count == 0 ? $"as {On(day)}" : $"as {On(day)}, for {Words(purposes)}";

    internal static string Owed(DateOnly? day) => $"left out {On(day)}, so it comes again";

    internal static string LessTalk(int now, int before) => $"known by now: {now} s of talk instead of {before} s";

    internal static string StillOff(DateOnly? day, string because) => because.StartsWith("as on ", StringComparison.Ordinal) ? because : $"as {On(day)}: {because}";

    internal static string InsteadOf(Exercise old, IReadOnlyList<Purpose> shared) =>
        shared.Count == 0 ? $"instead of {old.Title}, for variety" : $"instead of {old.Title}, for variety; it trains {Words(shared)} as well";

    internal static string NewToChoir(int seconds) => $"new to the choir: {seconds} s to explain it";

    internal static string TooFewChanges(int changed) =>
        $"Only {Count(changed, "exercise")} could be exchanged for variety: for the other steps the catalogue has none of the same stage and span that breaks no rule.";

    internal static string New(string title, string work) => $"+ {title}, {work}";

    internal static string Changed(string title, string work, string before) =>
        work == before ? $"~ {title}, {work}" : $"~ {title}, {work} (before: {before})";

    internal static string Kept(string title, string because) => because.Length == 0 ? $"= {title}" : $"= {title}: {because}";

    internal static string Reason(string because) => $"      {because}";

    internal static string Trimmed(int minutes) => $"shortened to keep the {minutes} minutes";

    internal static string Extended(int minutes) => $"lengthened to fill the {minutes} minutes";

    internal static string OffMinutes(TimeSpan planned, int minutes) =>
        $"The steps take {ClockText.Of(planned)} of the {minutes} minutes: change the number of steps or the minutes by hand.";

    internal static string NotServed(ChoirNeed need, NoteNaming notes) =>
        $"{need.WordsIn(notes)}: nothing in this plan serves it; choose an exercise for it by hand (warmup exercises find).";

    private static string Evidence(Need need) => need.IsAsked
        ? need.Words
        : string.Create(CultureInfo.InvariantCulture, $"{need.Words} ({Count(need.Rungs, "key")}, {need.Date:d MMMM yyyy})");

    private static string Order(Stage stage) => stage switch
    {
        Stage.Body or Stage.Breathing => "breath comes before sound",
        Stage.Sung => "a closed vowel is the first one sung",
        Stage.Settling => "the voices settle last",
        _ => "half-closed sounds come before full singing",
    };

    private static string On(DateOnly? day) => day is { } known ? string.Create(CultureInfo.InvariantCulture, $"on {known:d MMMM}") : "last time";

    private static string Words(IReadOnlyList<Purpose> purposes) => string.Join(" and ", purposes.Take(MostPurposes).Select(PurposeData.Words));

    internal static string Count(int number, string thing) => number == 1 ? $"1 {thing}" : $"{number} {thing}s";
}
