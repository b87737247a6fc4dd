using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>All sessions from the view of one part: what it sang, and the marks that may concern it, by kind.</summary>
internal sealed class History
{
    /// <summary>In place of the row of a rung that the part did not sing, and of one that does not count on an evening that says less.</summary>
    private const int NotSung = -1;
    private const int LeftOut = -2;

    private readonly List<ExposureRow> rows;
    private readonly Dictionary<string, List<PartMark>> marks = [];

    private History(Part part, IReadOnlyList<SungSession> sessions)
    {
        (Part, rows) = (part, new(sessions.Sum(session => session.Rungs.Count)));
        for (int session = 0; session < sessions.Count; session++)
        {
            AddMarks(sessions[session], session, AddRows(sessions[session], session));
        }

        Exposures = new(part.Id, [.. rows]);
    }

    internal Part Part { get; }

    internal Exposures Exposures { get; }

    /// <summary>Marks by kind, in order; a second mark of one kind in one rung adds nothing.</summary>
    internal IEnumerable<(string Kind, bool IsPraise, IReadOnlyList<PartMark> Marks)> Kinds =>
        marks.OrderBy(kind => kind.Key, StringComparer.Ordinal).Select(kind => (kind.Key, kind.Value[0].Mark.IsPraise, (IReadOnlyList<PartMark>)kind.Value));

    internal static History Of(Part part, IReadOnlyList<SungSession> sessions) => new(part, sessions);

    /// <summary>The row of each rung.</summary>
    private int[] AddRows(SungSession session, int index)
    {
        bool[] isMeant = new bool[session.Rungs.Count];
        foreach (HeardMark mark in session.Marks.Where(mark => mark.Candidates.Count > 0))
        {
            isMeant[mark.Candidates[0].Rung] = true;
        }

        int[] rowOf = new int[session.Rungs.Count];
        double weight = session.Weights.GetValueOrDefault(Part.Id, 1);
        double due = 0;
        int step = -1;
        int stratum = rows.Count == 0 ? 0 : rows[^1].Stratum;
        for (int rung = 0; rung < rowOf.Length; rung++)
        {
            ExposedRung sung = session.Rungs[rung];
            ExposedLine? line = sung.IsWhole || isMeant[rung] ? sung.LineOf(Part.Id) : null;
            // On an evening that weighs half every other rung counts, with its marks: whole counts keep the tests exact.
            due += line is null ? 0 : weight;
            if (line is null || due < 1)
            {
                rowOf[rung] = line is null ? NotSung : LeftOut;
                continue;
            }

            due--;
            stratum += sung.Step == step ? 0 : 1;
            step = sung.Step;
            rowOf[rung] = rows.Count;
            rows.Add(new(line, sung.MilliBpm, sung.Minute, index, stratum));
        }

        return rowOf;
    }

    private void AddMarks(SungSession session, int index, int[] rowOf)
    {
        HashSet<(string Kind, int Row, int Named)> seen = [];
        foreach (HeardMark mark in session.Marks.Where(mark => mark.Parts.Count == 0 || mark.Parts.Contains(Part.Id)))
        {
            bool isLeftOut = mark.Candidates is [{ Rung: var likeliest }, ..] && rowOf[likeliest] == LeftOut;
            MarkedRow[] candidates = isLeftOut ? [] : Candidates(mark, session, rowOf);
            if (candidates.Length > 0 && seen.Add((mark.Kind, candidates[0].Row, candidates[0].Named.FirstOrDefault(-1))))
            {
                if (!marks.TryGetValue(mark.Kind, out List<PartMark>? ofKind))
                {
                    marks.Add(mark.Kind, ofKind = []);
                }

                ofKind.Add(new(mark, index, candidates, mark.Parts.Count > 0 ? 1 : 1.0 / SingersOf(mark, session, rowOf)));
            }
        }
    }

    /// <summary>How many parts sang the likeliest rung that the part sang.</summary>
    private static int SingersOf(HeardMark mark, SungSession session, int[] rowOf) =>
        session.Rungs[mark.Candidates.First(candidate => rowOf[candidate.Rung] >= 0).Rung].Lines.Count;

    private MarkedRow[] Candidates(HeardMark mark, SungSession session, int[] rowOf)
    {
        RungWeight[] sung = [.. mark.Candidates.Where(candidate => rowOf[candidate.Rung] >= 0)];
        double sum = sung.Sum(candidate => candidate.Weight);
        return [.. sung.Select(candidate => new MarkedRow(
            rowOf[candidate.Rung], candidate.Weight / sum, NamedPitches.Of(mark, rows[rowOf[candidate.Rung]].Line, session.Rungs[candidate.Rung].Tonic)))];
    }
}
