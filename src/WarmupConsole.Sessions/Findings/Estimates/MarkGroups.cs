namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// Marks of one part and kind, with those counted together that say the same: the same lines, as likely, with the same pitches named. So ten years
/// of marks are fitted about as quickly as one. Weights are taken in twentieths: nobody knows his own lag any better.
/// </summary>
internal sealed class MarkGroups
{
    private const double Grain = 20;

    private readonly int[] groupOf;

    internal MarkGroups(Exposures exposures, IReadOnlyList<PartMark> marks)
    {
        (Marks, groupOf) = (marks, new int[marks.Count]);
        Dictionary<Key, int> known = [];
        List<MarkGroup> groups = [];
        for (int mark = 0; mark < marks.Count; mark++)
        {
            MarkGroup one = Of(exposures, marks[mark]);
            if (!known.TryGetValue(new(one), out int group))
            {
                known.Add(new(one), group = groups.Count);
                groups.Add(one);
            }
            else
            {
                groups[group] = groups[group] with { Count = groups[group].Count + 1 };
            }

            groupOf[mark] = group;
        }

        Groups = [.. groups];
    }

    internal IReadOnlyList<PartMark> Marks { get; }

    internal MarkGroup[] Groups { get; }

    /// <summary>The group of a mark.</summary>
    internal int GroupOf(int mark) => groupOf[mark];

    private static MarkGroup Of(Exposures exposures, PartMark mark)
    {
        MarkedCell[] cells = new MarkedCell[mark.Candidates.Count];
        for (int i = 0; i < cells.Length; i++)
        {
            (int row, double weight, IReadOnlyList<int> named) = mark.Candidates[i];
            cells[i] = new(exposures.Rows[row].Cell, Math.Max(1, Math.Round(weight * Grain)) / Grain, Set(named));
        }

        return new(mark.Share, 1, cells);
    }

    private static UInt128 Set(IReadOnlyList<int> pitches)
    {
        UInt128 set = UInt128.Zero;
        foreach (int pitch in pitches)
        {
            set |= UInt128.One << pitch;
        }

        return set;
    }

    /// <summary>Compares groups by all but their count.</summary>
    private readonly record struct Key(MarkGroup Group)
    {
        public bool Equals(Key other) => Group.Share.Equals(other.Group.Share) && Group.Cells.AsSpan().SequenceEqual(other.Group.Cells);

        public override int GetHashCode()
        {
            HashCode hash = default;
            foreach (MarkedCell cell in Group.Cells)
            {
                hash.Add(cell);
            }

            return hash.ToHashCode();
        }
    }
}
