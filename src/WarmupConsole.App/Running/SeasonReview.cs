using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Sessions.Findings.Practice;
using WarmupConsole.Storage.Decisions;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>What the logs of the last weeks show, less what the director dismissed.</summary>
/// <param name="Choir">The choir as it is now.</param>
/// <param name="Sessions">What was weighed, oldest first.</param>
/// <param name="Findings">Strongest first.</param>
/// <param name="Dismissed">Findings that are not told, with the decision.</param>
/// <param name="Ranges">Limits that could move.</param>
/// <param name="Rates">The counts behind it all.</param>
/// <param name="Practised">Purposes covered, and how long exercises take.</param>
/// <param name="LeftOut">What was not weighed, in sentences.</param>
internal sealed record SeasonReview(
    Choir Choir,
    IReadOnlyList<SungSession> Sessions,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<(Finding Finding, Decision Decision)> Dismissed,
    IReadOnlyList<RangeAdvice> Ranges,
    IReadOnlyList<RateRow> Rates,
    Practised Practised,
    IReadOnlyList<string> LeftOut)
{
    internal static SeasonReview Of(ChoirFolder folder, int weeks = SeasonLogs.UsualWeeks)
    {
        SeasonLogs logs = SeasonLogs.Load(folder, weeks);
        ChoirFindings all = ChoirFindings.From(logs.Sessions, folder.Choir);
        FileRead<IReadOnlyList<Decision>> decisions = DecisionsFile.Load(folder);
        Practised practised = Practised.In(logs.Sessions, folder.Exercises);
        IReadOnlyDictionary<string, Decision> dismissed = DecisionsFile.Dismissed(decisions.Value ?? []);
        return new(
            folder.Choir,
            logs.Sessions,
            [.. all.Findings.Where(finding => !dismissed.ContainsKey(finding.Id))],
            [.. all.Findings.Where(finding => dismissed.ContainsKey(finding.Id)).Select(finding => (finding, dismissed[finding.Id]))],
            all.Ranges,
            all.Rates,
            practised,
            [.. logs.LeftOut, .. decisions.Problems.Select(problem => problem.ToString()), .. NotWeighed(all, practised)]);
    }

    /// <summary>Parts against pitches.</summary>
    internal IReadOnlyList<HeatRow> Heat => HeatTable.Of(Choir, Rates);

    /// <summary>What was not told and what was not weighed, at the end of every review; one sentence when that is nothing.</summary>
    internal IReadOnlyList<string> NotTold => [.. Dismissed.Select(Dismissal), .. LeftOut.DefaultIfEmpty(SeasonTexts.Nothing)];

    internal static string Dismissal((Finding Finding, Decision Decision) dismissed) => SeasonTexts.Dismissed(
        dismissed.Finding.Id, DayText.Write(dismissed.Decision.On), dismissed.Decision.Why);

    private static IEnumerable<string> NotWeighed(ChoirFindings all, Practised practised) =>
    [
        .. all.UnknownParts.Select(part => SeasonTexts.UnknownPart(part.Key, part.Value)),
        .. all.UnattachedMarks == 0 ? (string[])[] : [SeasonTexts.Unattached(all.UnattachedMarks)],
        .. practised.Gone.Count == 0 ? (string[])[] : [SeasonTexts.Gone(practised.Gone)],
    ];
}
