using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>All sessions from the view of one part: what it sang, and the marks that may concern it, by kind.</summary>
internal sealed class History
{
    /// <summary>In place of the row of a rung that the part did not sing, and of one that does not count on an evening that says less.</summary>
    private const int NotSung = -1;
    private const int LeftOut = -2;

    private readonly Dictionary<string, List<PartMark>> marks = [];

    private History(Part part, IReadOnlyList<SungSession> sessions)
    {
        (Part, Exposures) = (part, new(part.Id, sessions.Sum(session => session.Rungs.Count)));
        for (int session = 0; session < sessions.Count; session++)
        {
            AddMarks(sessions[session], session, AddRows(sessions[session], session));
        }
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
            rowOf[rung] = Exposures.Add(line, sung, index, isFirst: sung.Step != step);
            step = sung.Step;
        }

        return rowOf;
    }

    private void AddMarks(SungSession session, int index, int[] rowOf)
    {
        HashSet<(string Kind, int Row, int Named)> seen = [];
        foreach (HeardMark mark in session.Marks.Where(mark => mark.Parts.Count == 0 || mark.Parts.Contains(Part.Id)))
        {
            bool isLeftOut = mark.Candidates is [{ Rung: var likeliest }, ..] && rowOf[likeliest] == LeftOut;
            List<MarkedRow> candidates = isLeftOut ? [] : Candidates(mark, session, rowOf);
            if (candidates.Count > 0 && seen.Add((mark.Kind, candidates[0].Row, candidates[0].Named.FirstOrDefault(-1))))
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

    private List<MarkedRow> Candidates(HeardMark mark, SungSession session, int[] rowOf)
    {
        List<MarkedRow> sung = new(mark.Candidates.Count);
        double sum = 0;
        foreach ((int rung, double weight) in mark.Candidates)
        {
            if (rowOf[rung] is >= 0 and int row)
            {
                sung.Add(new(row, weight, NamedPitches.Of(mark, Exposures.LineOf(row), session.Rungs[rung].Tonic)));
                sum += weight;
            }
        }

        for (int i = 0; i < sung.Count; i++)
        {
            sung[i] = sung[i] with { Weight = sung[i].Weight / sum };
        }

        return sung;
    }
}
