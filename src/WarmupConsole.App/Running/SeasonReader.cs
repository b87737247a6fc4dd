using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Findings.Exposure;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>Reads session logs, several at once; a log that cannot be read never keeps the others from being read. Then gathers them in order.</summary>
internal sealed class SeasonReader
{
    private readonly LineBook lines = new();
    private readonly LoggedTexts texts = new();
    private readonly Dictionary<(DateTimeOffset At, ulong Checksum), (int Index, int Records)> runs = [];
    private readonly List<SungSession> sessions = [];
    private readonly List<string> leftOut = [];

    internal IReadOnlyList<SungSession> Sessions => sessions;

    internal IReadOnlyList<string> LeftOut => leftOut;

    /// <summary>One log, folded. From any thread.</summary>
    internal ReadSession Read(string path)
    {
        string name = Path.GetFileName(path);
        FileRead<SessionLog> read = SessionLogFile.Read(path);
        if (!read.IsGood)
        {
            return new(name, [SeasonTexts.Unreadable(name, read.Problems[0].Message)]);
        }

        string[] damages = [.. read.Value.Damages.GroupBy(damage => damage.Sentence).Select(same => SeasonTexts.Damaged(name, same.Count(), same.Key))];
        IReadOnlyList<SessionRecord> records = read.Value.Records;
        return read.Value.Start is { } start && LoggedContent.Read(start with { PlanYaml = "" }, records, texts) is { } content
            ? new(name, damages) { Session = SungSession.From(name, records, content.Choir, content.Exercises, lines), Run = (records[0].At, read.Value.FirstChecksum), Records = records.Count }
            : new(name, [.. damages, SeasonTexts.Unreadable(name, AppTexts.NoStart)]);
    }

    /// <summary>A copy made by folder synchronisation holds the same run: the longer one counts. Two runs of one minute both count.</summary>
    internal void Add(ReadSession read)
    {
        leftOut.AddRange(read.LeftOut);
        if (read.Session is not { } session)
        {
            return;
        }

        if (!runs.TryGetValue(read.Run, out (int Index, int Records) other))
        {
            runs.Add(read.Run, (sessions.Count, read.Records));
            sessions.Add(session);
            AddOddities(session);
            return;
        }

        string shorter = read.Records > other.Records ? sessions[other.Index].Name : read.Name;
        if (read.Records > other.Records)
        {
            sessions[other.Index] = session;
            runs[read.Run] = (other.Index, read.Records);
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
}
