using System.Collections.Concurrent;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.App.Running;

/// <summary>All session logs of a choir, folded for findings; and what of them is left out, in sentences.</summary>
/// <param name="Sessions">Oldest first, within the weeks that count.</param>
/// <param name="LeftOut">Empty when everything was read and weighed.</param>
internal sealed record SeasonLogs(IReadOnlyList<SungSession> Sessions, IReadOnlyList<string> LeftOut)
{
    /// <summary>Half a year: what was heard longer ago says little about this choir.</summary>
    internal const int UsualWeeks = 26;

    private const int DaysAWeek = 7;

    /// <param name="folder">The choir's folder.</param>
    /// <param name="weeks">How far back from the newest session; 0 takes all.</param>
    internal static SeasonLogs Load(ChoirFolder folder, int weeks)
    {
        SeasonReader reader = new();
        foreach (ReadSession read in Partitioner.Create(folder.SessionPaths.ToArray(), loadBalance: true).AsParallel().AsOrdered().Select(reader.Read))
        {
            reader.Add(read);
        }

        SungSession[] all = [.. reader.Sessions.OrderBy(session => session.Start).ThenBy(session => session.Name, StringComparer.Ordinal)];
        DateTimeOffset from = weeks == 0 || all.Length == 0 ? DateTimeOffset.MinValue : all[^1].Start.AddDays(-DaysAWeek * weeks);
        SungSession[] counted = [.. all.Where(session => session.Start >= from)];
        string[] older = all.Length == counted.Length ? [] : [SeasonTexts.Older(all.Length - counted.Length, weeks)];
        return new(counted, [.. older, .. reader.LeftOut]);
    }
}
