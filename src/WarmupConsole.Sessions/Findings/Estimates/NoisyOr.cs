namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// Which pitch was at fault? A rung is marked when at least one of its causes shows: the background of its exercise, or one of the weak
/// pitches that it asks for, each with a chance of its own (a noisy OR). Which cause showed, and which rung an uncertain mark means, is unknown; both
/// are estimated together by expectation and maximisation.
/// </summary>
internal sealed class NoisyOr
{
    private const double LeastChance = 1e-4;
    private const double MostChance = 0.98;

    /// <summary>The background of an exercise leans on that of all, as if it had been sung so many times more.</summary>
    private const double Lean = 25;

    private readonly Exposures exposures;
    private readonly MarkGroups marks;
    private readonly int[] pitches;
    private readonly int[] masks;
    private readonly double[] exposed;
    private readonly double[] exerciseCounts;

    /// <summary>What is estimated: the chance of each pitch, and after them the background of each exercise.</summary>
    private readonly double[] values;

    /// <summary>What is put down to each of them in a round.</summary>
    private readonly double[] blames;

    /// <summary>For each cell, the chance that it is marked, and its odds.</summary>
    private readonly double[] markedChances;
    private readonly double[] odds;

    /// <summary>For each cell, the marks without a named pitch that mean it, as far as is known.</summary>
    private readonly double[] meant;
    private readonly double[] likely;

    private NoisyOr(Exposures exposures, MarkGroups marks, IReadOnlyList<int> pitches, NoisyOr? near)
    {
        (this.exposures, this.marks, this.pitches) = (exposures, marks, [.. pitches]);
        masks = [.. exposures.Lines.Select(line => pitches.Index().Sum(pitch => line.Has(pitch.Item) ? 1 << pitch.Index : 0))];
        (exposed, exerciseCounts) = ([.. pitches.Select(pitch => (double)exposures.Exposed(pitch))], new double[exposures.ExerciseCount]);
        for (int cell = 0; cell < masks.Length; cell++)
        {
            exerciseCounts[exposures.CellExercises[cell]] += exposures.Counts[cell];
        }

        double unknown = Math.Max(LeastChance, marks.Groups.Sum(group => group.Weight) / Math.Max(1, exposures.Rows.Length) / 2);
        values =
        [
            .. pitches.Select(pitch => near is not null && near.pitches.Contains(pitch) ? near.ChanceOf(pitch) : 0.2),
            .. near?.values.Skip(near.pitches.Length) ?? Enumerable.Repeat(unknown, exposures.ExerciseCount),
        ];
        blames = new double[values.Length];
        (markedChances, odds, meant) = (new double[masks.Length], new double[masks.Length], new double[masks.Length]);
        likely = new double[marks.Groups.Length == 0 ? 0 : marks.Groups.Max(group => group.Cells.Length)];
    }

    /// <summary>Logarithm of the likelihood.</summary>
    internal double LogLikelihood { get; private set; }

    /// <summary>Fits the chances of some pitches (at most 30), beside the backgrounds.</summary>
    /// <param name="exposures">What the part sang.</param>
    /// <param name="marks">Of one kind.</param>
    /// <param name="pitches">MIDI numbers.</param>
    /// <param name="near">A fit with a pitch more or less, to begin at: it saves most of the rounds.</param>
    internal static NoisyOr Fit(Exposures exposures, MarkGroups marks, IReadOnlyList<int> pitches, NoisyOr? near = null)
    {
        NoisyOr fit = new(exposures, marks, pitches, near);
        FixedPoint.Find(fit.values, (LeastChance, MostChance), fit.Round);
        fit.Refresh();
        fit.LogLikelihood = fit.Likelihood();
        return fit;
    }

    /// <summary>The chance that the pitch, whenever it is sung, brings a mark; 0–1.</summary>
    internal double ChanceOf(int pitch) => values[IndexOf(pitch)];

    /// <summary>How many plain exposures would tell as much about the chance of the pitch: fewer, because other causes and uncertain rungs blur it.</summary>
    internal double WorthOf(int pitch)
    {
        int index = IndexOf(pitch);
        double chance = values[index];
        double information = 0;
        for (int cell = 0; cell < masks.Length; cell++)
        {
            if (Has(cell, index))
            {
                double marked = markedChances[cell];
                double others = (1 - marked) / (1 - chance);
                information += exposures.Counts[cell] * others * others / (marked * (1 - marked));
            }
        }

        double worth = information * chance * (1 - chance);
        double spread = worth * chance * (1 - chance);
        return worth * spread / (spread + Uncertainty(index));
    }

    /// <summary>The rows that the marks mean most likely, given all chances; in order, each once.</summary>
    internal int[] Rows()
    {
        int[] likeliest = [.. marks.Groups.Select(Likeliest)];
        return Exposures.InOrder(marks.Marks.Select((mark, index) => mark.Candidates[likeliest[marks.GroupOf(index)]].Row));
    }

    /// <summary>For each mark, how likely it means a rung with the pitch, and how much of it is put down to the pitch.</summary>
    internal IEnumerable<(PartMark Mark, double Meant, double Blamed)> Attribution(int pitch)
    {
        int index = IndexOf(pitch);
        (double Meant, double Blamed)[] shares = [.. marks.Groups.Select(group => Shares(group, index))];
        return marks.Marks.Select((mark, number) => (mark, shares[marks.GroupOf(number)].Meant, shares[marks.GroupOf(number)].Blamed));
    }

    private int IndexOf(int pitch) => Array.IndexOf(pitches, pitch);

    private bool Has(int cell, int index) => (masks[cell] >> index & 1) == 1;

    /// <summary>Those of the fitted pitches that a mark named.</summary>
    private int Weak(UInt128 named)
    {
        int weak = 0;
        for (int i = 0; i < pitches.Length; i++)
        {
            weak |= (named >> pitches[i] & UInt128.One) == UInt128.One ? 1 << i : 0;
        }

        return weak;
    }

    private ref double BackgroundOf(double[] all, int cell) => ref all[pitches.Length + exposures.CellExercises[cell]];

    private void Refresh()
    {
        for (int cell = 0; cell < masks.Length; cell++)
        {
            double marked = 1 - Unmarked(cell, masks[cell]);
            (markedChances[cell], odds[cell]) = (marked, marked / (1 - marked));
        }
    }

    /// <summary>The chance that neither the background nor any of some pitches shows.</summary>
    private double Unmarked(int cell, int mask)
    {
        double unmarked = 1 - BackgroundOf(values, cell);
        for (int i = 0; i < pitches.Length; i++)
        {
            unmarked *= (mask >> i & 1) == 1 ? 1 - values[i] : 1;
        }

        return unmarked;
    }

    /// <summary>How likely each line is that a mark may mean, given all chances, into <see cref="likely"/>; returns what they are together.</summary>
    private double Weigh(MarkedCell[] cells)
    {
        double sum = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            likely[i] = cells[i].Weight * Odds(cells[i]);
            sum += likely[i];
        }

        return sum;
    }

    private double Odds(in MarkedCell one) =>
        one.Named == UInt128.Zero ? odds[one.Cell] : (1 - Unmarked(one.Cell, Weak(one.Named))) / (1 - markedChances[one.Cell]);

    private int Likeliest(MarkGroup group)
    {
        Weigh(group.Cells);
        int best = 0;
        for (int i = 1; i < group.Cells.Length; i++)
        {
            best = likely[i] > likely[best] ? i : best;
        }

        return best;
    }

    private (double Meant, double Blamed) Shares(MarkGroup group, int index)
    {
        double sum = Weigh(group.Cells);
        (double means, double blamed) = (0, 0);
        for (int i = 0; i < group.Cells.Length; i++)
        {
            means += Has(group.Cells[i].Cell, index) ? likely[i] / sum : 0;
            blamed += likely[i] / sum * Blame(group.Cells[i], index);
        }

        return (means, blamed);
    }

    /// <summary>How much of a mark in this cell is put down to one pitch: all of it, in shares, when the mark named weak pitches.</summary>
    private double Blame(MarkedCell one, int index)
    {
        if (one.Named != UInt128.Zero)
        {
            int weak = Weak(one.Named);
            return (weak >> index & 1) / (double)Math.Max(1, int.PopCount(weak));
        }

        return Has(one.Cell, index) ? values[index] / markedChances[one.Cell] : 0;
    }

    /// <summary>Puts every mark down to what may have caused it, and takes the chances from that; returns by how much one of them moved at most.</summary>
    private double Round()
    {
        Refresh();
        Array.Clear(blames);
        Array.Clear(meant);
        foreach (MarkGroup group in marks.Groups)
        {
            double whole = group.Weight / Weigh(group.Cells);
            for (int i = 0; i < group.Cells.Length; i++)
            {
                Count(group.Cells[i], likely[i] * whole);
            }
        }

        for (int cell = 0; cell < masks.Length; cell++)
        {
            double part = meant[cell] / markedChances[cell];
            BackgroundOf(blames, cell) += part * BackgroundOf(values, cell);
            for (int i = 0; i < pitches.Length; i++)
            {
                blames[i] += Has(cell, i) ? part * values[i] : 0;
            }
        }

        return Move();
    }

    /// <summary>A mark without a named pitch is divided later, with all others of its cell; one that named weak pitches speaks for them, else for the background.</summary>
    private void Count(in MarkedCell one, double part)
    {
        if (one.Named == UInt128.Zero)
        {
            meant[one.Cell] += part;
            return;
        }

        int weak = Weak(one.Named);
        BackgroundOf(blames, one.Cell) += weak == 0 ? part : 0;
        for (int i = 0; i < pitches.Length; i++)
        {
            blames[i] += (weak >> i & 1) * part / Math.Max(1, int.PopCount(weak));
        }
    }

    private double Move()
    {
        double usual = blames.Skip(pitches.Length).Sum() / Math.Max(1, exerciseCounts.Sum());
        double most = 0;
        for (int i = 0; i < values.Length; i++)
        {
            int exercise = i - pitches.Length;
            double target = exercise < 0 ? blames[i] / Math.Max(1, exposed[i]) : (blames[i] + (Lean * usual)) / (exerciseCounts[exercise] + Lean);
            double next = Math.Clamp(target, LeastChance, MostChance);
            most = Math.Max(most, Math.Abs(next - values[i]));
            values[i] = next;
        }

        return most;
    }

    private double Likelihood()
    {
        double sum = 0;
        for (int cell = 0; cell < masks.Length; cell++)
        {
            sum += exposures.Counts[cell] * Math.Log(1 - markedChances[cell]);
        }

        return sum + marks.Groups.Sum(group => group.Weight * Math.Log(Weigh(group.Cells)));
    }

    /// <summary>The variance that comes from not knowing which rung was meant.</summary>
    private double Uncertainty(int index) => marks.Groups.Sum(group =>
    {
        double means = Shares(group, index).Meant;
        return group.Weight * means * (1 - means);
    });
}
