using System.Globalization;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning.Seasons;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Every sentence of a proposed plan: reasons, differences, and what could not be met.</summary>
internal static class NextPlanTexts
{
    private const string BothSides = "reached here from below and from above";

    internal const string Relief = "on a half-closed sound, which is easier on the voice";

    internal const string Soft = "soft";

    internal const string FromAbove = "from above";

    internal const string AndBack = " and back";

    internal const string KeysOfLadder = "keys of its ladder";

    internal const string LongLadder = "a long ladder";

    internal const string Worn = "sung in several of the last plans";

    internal const string TaxingTonight = "taxing, for the voices of tonight";

    internal const string ThinTonight = "needs every part, and one is thin tonight";

    internal const string Varied = "unlike the variant before";

    internal const string GentleTonight = "gentle, for the voices of tonight";

    /// <summary>"altos flat on B♭4 in about 6 of 24 keys over 6 weeks (alto-flat-b4), reached here from below and from above".</summary>
    internal static string Answers(Finding finding, string title) => $"{Shows(finding, title)}: {BothSides}";

    /// <summary>A finding with its evidence and its name.</summary>
    internal static string Shows(Finding finding, string title) => string.Create(
        CultureInfo.InvariantCulture, $"{title}, marked in about {finding.Rate.Marked:0} of {finding.Rate.Exposed:0} keys in {Count(finding.Sessions.Count, "session")} ({finding.Id})");

    internal static string Heard(Need need) => string.Create(CultureInfo.InvariantCulture, $"heard on {need.Date:d MMMM yyyy}: {need.Words} ({Count(need.Rungs, "key")})");

    internal static string ToSpare(string need) => $"to spare: {need}";

    /// <summary>"kept below, soft, on a hum, from above": how a step spares a part.</summary>
    internal static string Sparingly(Sparing spared, WarmupStep step, NoteNaming notes) => string.Join(", ", new[]
    {
        spared.IsHigh ? "kept below" + Named(spared, notes) : spared.IsLow ? "kept above" + Named(spared, notes) : "within what is easy",
        Gentle.IsSoft(step.Exercise) ? Soft : "",
        Gentle.Sound(step.Exercise),
        Gentle.ComesFromAbove(step) ? FromAbove : "",
    }.Where(word => word.Length > 0));

    /// <summary>The pitch, where the words do not name it.</summary>
    private static string Named(Sparing spared, NoteNaming notes) => notes.Write(spared.Pitch!.Value) is var note && spared.Words.Contains(note, StringComparison.Ordinal) ? "" : " " + note;

    internal static string NothingSpares(string words) => $"{words}: no step in this plan is gentle and keeps away from it; let them hum low and softly, or rest.";

    internal static string Waits(string words, Sparing keeping) => $"{words}: waits, {keeping.Words}.";

    internal static string Crosses(Sparing crossed) => $"takes {PartPlural.Of(crossed.Part)} where they are to be spared ({crossed.Words})";

    internal static string CrossesAllTheSame(IEnumerable<string> titles, Sparing crossed) =>
        $"{crossed.Words}, and no plan of these minutes spares {PartPlural.Of(crossed.Part)} throughout: let them rest in the {(crossed.IsLow ? "lowest" : "highest")} keys of {string.Join(", ", titles)}, or give the plan fewer minutes.";

    internal static string Insisted(Sparing kept) => $"{kept.Words}, and needs.yaml asks for it all the same: mark that need as done (warmup need done) to spare them.";

    internal static string UnusualRounds(int usual) => $"away from the usual {Count(usual, "round")}";

    internal static string Growth(int difficulty, SeasonTarget season) => $"difficulty {difficulty} of 100, wanted {season.Difficulty} ({SeasonTexts.Where(season)})";

    internal static string RangeEnd(Part part, bool isTop) => $"takes {PartPlural.Of(part)} to the {(isTop ? "top" : "bottom")} of what is easy";

    internal static string WhereItFails(Circumstance one) => one.Aspect == Aspect.Vowel ? $"on [{one.Value}], where it fails most" : $"at {one.Value}, where it fails most";

    /// <summary>"heard on 16 February 2027, reached here from below and from above: altos flat in E (2 keys), ..."; all heard on one day, or one that was asked for.</summary>
    internal static string Answers(IReadOnlyList<Need> needs) => needs[0].IsAsked
        ? $"asked for, {BothSides}: {needs[0].Words}"
        : string.Create(CultureInfo.InvariantCulture, $"heard on {needs[0].Date:d MMMM yyyy}, {BothSides}: {string.Join(", ", needs.Select(need => $"{need.Words} ({Count(need.Rungs, "key")})"))}");

    internal static string Serves(string need) => $"asked for: {need}";

    internal static string Trains(Purpose purpose, DateOnly? last, DateOnly today, bool isHistory) => (last, isHistory) switch
    {
        ({ } day, _) when today.DayNumber - day.DayNumber >= 14 => $"{PurposeData.Words(purpose)}, not since {Day(day)}",
        (null, true) => $"{PurposeData.Words(purpose)}, not yet in any plan here",
        _ => PurposeData.Words(purpose),
    };

    internal static string Kept(DateOnly? day) => $"as {On(day)}";

    internal static string Owed(DateOnly? day) => $"left out {On(day)}, so it comes again";

    internal static string LastSung(DateOnly day) => $"not sung since {Day(day)}";

    internal static string NewToChoir(int seconds) => $"new to the choir: {seconds} s to explain it";

    internal static string LearntTalk(int seconds) => $"{seconds} s of talk, as it took before";

    internal static string Quicker(string now, string before) => $"a little quicker: {now} instead of {before}";

    internal static string Peak(SeasonTarget season) => $"the summit, {season.ReachPercent} % of the way to the edge: {SeasonTexts.Where(season)}";

    internal static string Order(Stage stage) => stage switch
    {
        Stage.Body => "the body before the breath (common practice)",
        Stage.Breathing => "breath comes before sound (common practice)",
        Stage.Humming or Stage.LipTrill => "half-closed sounds come before full singing (common practice)",
        Stage.Settling => "the voices settle last (common practice)",
        _ => "fills the minutes well",
    };

    internal static string StillOff(DateOnly? day, string because) => because.StartsWith("as on ", StringComparison.Ordinal) ? because : $"as {On(day)}: {because}";

    internal static string NoStepFor(Need need) => NoStepFor(need.IsAsked
        ? need.Words
        : string.Create(CultureInfo.InvariantCulture, $"{need.Words} ({Count(need.Rungs, "key")}, {need.Date:d MMMM yyyy})"));

    internal static string NoStepFor(string words) => $"{words}: no step in this plan comes to it from below and from above; give it more minutes, or plan one by hand.";

    internal static string NoKeyFor(Need need) => string.Create(
        CultureInfo.InvariantCulture, $"{need.Words} ({Count(need.Rungs, "key")}, {need.Date:d MMMM yyyy}): it belongs to no key, so no ladder answers it; think of it when you choose the step.");

    internal static string NotServed(string need) => $"{need}: nothing in this plan serves it; choose an exercise for it by hand (warmup exercises find).";

    internal static string Vanished(string id) => $"The last plan had '{MarkText.Clean(id)}', which is neither in the catalogue nor in exercises/ any more: it is left out.";

    internal static string UnknownPart(string id) => $"A mark of last time names the part '{MarkText.Clean(id)}', which this choir does not have: it is left out.";

    internal static string NotMended(string remark) => $"Nothing in the catalogue mends this: {remark}";

    internal static string OffMinutes(TimeSpan planned, int minutes) =>
        $"The nearest plan takes {ClockText.Of(planned)} of the {minutes} minutes: change the minutes, or add exercises of other lengths.";

    internal static string NothingToPlan => "There is no exercise that this choir can sing: look at the ranges in choir.yaml (warmup ranges).";

    internal static string ManyNew(int count) => $"{count} exercises are new to the choir, since it knows too few: by common practice one is enough. Plan time to explain them.";

    internal static string NothingKnown => "No plan and no log tells yet what this choir has sung: nothing counts as new, and there is nothing to vary from.";

    internal static string Title(int minutes, string first) => first.Length == 0 ? $"{minutes} minutes" : $"{minutes} minutes: {first}";

    internal static string New(string title, string work) => $"+ {title}, {work}";

    internal static string LeftOut(string title) => $"- {title}";

    internal static string Changed(string title, string work, string before) => work == before ? $"~ {title}, {work}" : $"~ {title}, {work} (before: {before})";

    internal static string Same(string title) => $"= {title}";

    internal static string Reason(string because) => $"      {because}";

    internal static string Count(int number, string thing) => number == 1 ? $"1 {thing}" : $"{number} {thing}s";

    private static string On(DateOnly? day) => day is { } known ? $"on {Day(known)}" : "last time";

    private static string Day(DateOnly day) => string.Create(CultureInfo.InvariantCulture, $"{day:d MMMM}");
}
