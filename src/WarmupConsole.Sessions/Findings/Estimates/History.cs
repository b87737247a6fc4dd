using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>All sessions from the view of one part: what it sang, and the marks that may concern it, by kind.</summary>
internal sealed class History
{
    private readonly List<ExposureRow> rows = [];
    private readonly Dictionary<string, List<PartMark>> marks = [];

    private History(Part part, IReadOnlyList<SungSession> sessions)
    {
        Part = part;
        for (int session = 0; session < sessions.Count; session++)
        {
            Add(part.Id, sessions[session], session);
        }

        Exposures = new(part.Id, [.. rows]);
    }

    internal Part Part { get; }

    internal Exposures Exposures { get; }

    /// <summary>Marks by kind, in order; a second mark of one kind in one rung adds nothing.</summary>
    internal IEnumerable<(string Kind, bool IsPraise, IReadOnlyList<PartMark> Marks)> Kinds =>
        marks.OrderBy(kind => kind.Key, StringComparer.Ordinal).Select(kind => (kind.Key, kind.Value[0].Mark.IsPraise, (IReadOnlyList<PartMark>)kind.Value));

    internal static History Of(Part part, IReadOnlyList<SungSession> sessions) => new(part, sessions);

    private void Add(string part, SungSession session, int index)
    {
        HashSet<int> meant = [.. session.Marks.Where(mark => mark.Candidates.Count > 0).Select(mark => mark.Candidates[0].Rung)];
        Dictionary<int, int> rowOf = [];
        HashSet<int> leftOut = [];
        double due = 0;
        int step = -1;
        int stratum = rows.Count == 0 ? 0 : rows[^1].Stratum;
        for (int rung = 0; rung < session.Rungs.Count; rung++)
        {
            ExposedRung sung = session.Rungs[rung];
            if ((sung.IsWhole || meant.Contains(rung)) && sung.LineOf(part) is { } line)
            {
                // On an evening that weighs half every other rung counts, with its marks: whole counts keep the tests exact.
                due += session.Weights.GetValueOrDefault(part, 1);
                if (due < 1)
                {
                    leftOut.Add(rung);
                    continue;
                }

                due--;
                stratum += sung.Step == step ? 0 : 1;
                step = sung.Step;
                rowOf.Add(rung, rows.Count);
                rows.Add(new(line, sung, index, stratum));
            }
        }

        AddMarks(part, session, index, (rowOf, leftOut));
    }

    private void AddMarks(string part, SungSession session, int index, (Dictionary<int, int> RowOf, HashSet<int> LeftOut) rungs)
    {
        HashSet<(string Kind, int Row, int Named)> seen = [];
        foreach (HeardMark mark in session.Marks.Where(mark => mark.Parts.Count == 0 || mark.Parts.Contains(part)))
        {
            bool isLeftOut = mark.Candidates is [{ Rung: var likeliest }, ..] && rungs.LeftOut.Contains(likeliest);
            MarkedRow[] candidates = isLeftOut ? [] : Candidates(mark, rungs.RowOf);
            if (candidates.Length > 0 && seen.Add((mark.Kind, candidates[0].Row, candidates[0].Named.FirstOrDefault(-1))))
            {
                if (!marks.TryGetValue(mark.Kind, out List<PartMark>? ofKind))
                {
                    marks.Add(mark.Kind, ofKind = []);
                }

                double share = mark.Parts.Count > 0 ? 1 : 1.0 / Math.Max(1, rows[candidates[0].Row].Rung.Lines.Count);
                ofKind.Add(new(mark, index, candidates, share));
            }
        }
    }

    private MarkedRow[] Candidates(HeardMark mark, Dictionary<int, int> rowOf)
    {
        RungWeight[] sung = [.. mark.Candidates.Where(candidate => rowOf.ContainsKey(candidate.Rung))];
        double sum = sung.Sum(candidate => candidate.Weight);
        return [.. sung.Select(candidate => rowOf[candidate.Rung]).Zip(sung, (row, candidate) =>
            new MarkedRow(row, candidate.Weight / sum, NamedPitches.Of(mark, rows[row].Line, rows[row].Rung.Tonic)))];
    }
}
