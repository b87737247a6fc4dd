using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>Reads session logs one after another. A log that cannot be read never keeps the others from being read.</summary>
internal sealed class SeasonReader
{
    private readonly LineBook lines = new();
    private readonly Dictionary<(string Choir, string Exercises), LoggedContent?> contents = [];
    private readonly Dictionary<(DateTimeOffset Start, RunStarted Run), (int Index, int Records)> runs = [];
    private readonly List<SungSession> sessions = [];
    private readonly List<string> leftOut = [];

    internal IReadOnlyList<SungSession> Sessions => sessions;

    internal IReadOnlyList<string> LeftOut => leftOut;

    internal void Add(string name, FileRead<SessionLog> read)
    {
        if (!read.IsGood)
        {
            leftOut.Add(SeasonTexts.Unreadable(name, read.Problems[0].Message));
            return;
        }

        leftOut.AddRange(read.Value.Damages.GroupBy(damage => damage.Sentence).Select(same => SeasonTexts.Damaged(name, same.Count(), same.Key)));
        if (read.Value.Start is not { } start || ContentOf(start)?.With(read.Value.Records) is not { } content)
        {
            leftOut.Add(SeasonTexts.Unreadable(name, AppTexts.NoStart));
            return;
        }

        Keep(name, SungSession.From(name, read.Value.Records, content.Choir, content.Exercises, lines), (read.Value.Records[0].At, start), read.Value.Records.Count);
    }

    /// <summary>A copy made by folder synchronisation holds the same run: the longer one counts. Two runs of one minute both count.</summary>
    private void Keep(string name, SungSession session, (DateTimeOffset Start, RunStarted Run) run, int records)
    {
        if (!runs.TryGetValue(run, out (int Index, int Records) other))
        {
            runs.Add(run, (sessions.Count, records));
            sessions.Add(session);
            AddOddities(session);
            return;
        }

        string shorter = records > other.Records ? sessions[other.Index].Name : name;
        if (records > other.Records)
        {
            sessions[other.Index] = session;
            runs[run] = (other.Index, records);
        }

        leftOut.Add(SeasonTexts.Copy(shorter, sessions[other.Index].Name));
    }

    private void AddOddities(SungSession session)
    {
        if (session.UnknownRungs > 0)
        {
            leftOut.Add(SeasonTexts.UnknownExercises(session.Name, session.UnknownRungs));
        }

        if (session.WasClockSetBack)
        {
            leftOut.Add(SeasonTexts.ClockSetBack(session.Name));
        }
    }

    /// <summary>Choir and exercises are the same text in most logs, and reading them is most of the work.</summary>
    private LoggedContent? ContentOf(RunStarted start)
    {
        if (!contents.TryGetValue((start.ChoirYaml, start.ExercisesYaml), out LoggedContent? content))
        {
            content = LoggedContent.Read(start with { PlanYaml = "" });
            contents.Add((start.ChoirYaml, start.ExercisesYaml), content);
        }

        return content;
    }
}
