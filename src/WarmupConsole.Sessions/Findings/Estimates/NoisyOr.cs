namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// Which pitch was at fault? A rung is marked when at least one of its causes shows: the background of its exercise, or one of the weak
/// pitches that it asks for, each with a chance of its own (a noisy OR). Which cause showed, and which rung an uncertain mark means, is unknown; both
/// are estimated together by expectation and maximisation.
/// </summary>
internal sealed class NoisyOr
{
    private const int MostRounds = 200;
    private const double Settled = 1e-6;
    private const double LeastChance = 1e-4;
    private const double MostChance = 0.98;

    /// <summary>The background of an exercise leans on that of all, as if it had been sung so many times more.</summary>
    private const double Lean = 25;

    private readonly Exposures exposures;
    private readonly IReadOnlyList<PartMark> marks;
    private readonly IReadOnlyList<int> pitches;
    private readonly int[] masks;
    private readonly (int Cell, double Weight, int Named)[][] candidates;
    private readonly double[] backgrounds;
    private readonly double[] chances;
    private readonly double[] faults;
    private readonly double[] exposed;
    private readonly double[] exerciseCounts;
    private readonly double[] markedChances;

    private NoisyOr(Exposures exposures, IReadOnlyList<PartMark> marks, IReadOnlyList<int> pitches)
    {
        (this.exposures, this.marks, this.pitches) = (exposures, marks, pitches);
        masks = [.. exposures.Lines.Select(line => pitches.Index().Sum(pitch => line.Has(pitch.Item) ? 1 << pitch.Index : 0))];
        candidates = [.. marks.Select(mark => mark.Candidates.Select(row => (exposures.CellOf(row.Row), row.Weight, NamedMask(row))).ToArray())];
        (chances, faults, exposed) = ([.. pitches.Select(_ => 0.2)], new double[pitches.Count], new double[pitches.Count]);
        (backgrounds, exerciseCounts) = (new double[exposures.ExerciseCount], new double[exposures.ExerciseCount]);
        for (int cell = 0; cell < masks.Length; cell++)
        {
            exerciseCounts[exposures.CellExercises[cell]] += exposures.Counts[cell];
            for (int i = 0; i < pitches.Count; i++)
            {
                exposed[i] += (masks[cell] >> i & 1) * exposures.Counts[cell];
            }
        }

        Array.Fill(backgrounds, Math.Max(LeastChance, marks.Sum(mark => mark.Share) / Math.Max(1, exposures.Rows.Count) / 2));
        markedChances = new double[masks.Length];
        Refresh();
    }

    /// <summary>Logarithm of the likelihood.</summary>
    internal double LogLikelihood { get; private set; }

    /// <summary>Fits the chances of some pitches (at most 30), beside the backgrounds.</summary>
    internal static NoisyOr Fit(Exposures exposures, IReadOnlyList<PartMark> marks, IReadOnlyList<int> pitches)
    {
        NoisyOr fit = new(exposures, marks, pitches);
        double change = 1;
        for (int round = 0; round < MostRounds && change > Settled; round++)
        {
            change = fit.Round();
        }

        fit.LogLikelihood = fit.Likelihood();
        return fit;
    }

    /// <summary>The chance that the pitch, whenever it is sung, brings a mark; 0–1.</summary>
    internal double ChanceOf(int pitch) => chances[IndexOf(pitch)];

    /// <summary>How many of the marks are put down to the pitch.</summary>
    internal double FaultsOf(int pitch) => faults[IndexOf(pitch)];

    /// <summary>How many plain exposures would tell as much about the chance of the pitch: fewer, because other causes and uncertain rungs blur it.</summary>
    internal double WorthOf(int pitch)
    {
        int index = IndexOf(pitch);
        double chance = chances[index];
        double information = 0;
        for (int cell = 0; cell < masks.Length; cell++)
        {
            if ((masks[cell] >> index & 1) == 1)
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

    /// <summary>The row that a mark means most likely, given all chances.</summary>
    internal int RowOf(int mark) =>
        marks[mark].Candidates[Likely(mark).Index().MaxBy(one => one.Item.Likely).Index].Row;

    /// <summary>For each mark, how likely it means a rung with the pitch, and how much of it is put down to the pitch.</summary>
    internal IEnumerable<(PartMark Mark, double Meant, double Blamed)> Attribution(int pitch)
    {
        int index = IndexOf(pitch);
        for (int mark = 0; mark < marks.Count; mark++)
        {
            (double meant, double blamed) = (0, 0);
            foreach ((int cell, double likely, int named) in Likely(mark))
            {
                meant += (masks[cell] >> index & 1) * likely;
                blamed += likely * Blame(cell, named, index);
            }

            yield return (marks[mark], meant, blamed);
        }
    }

    private int IndexOf(int pitch) => pitches.Index().First(entry => entry.Item == pitch).Index;

    private int NamedMask(MarkedRow row) => row.Named.Count == 0 ? 0 : (1 << 30) | pitches.Index().Sum(pitch => row.Named.Contains(pitch.Item) ? 1 << pitch.Index : 0);

    private double MarkedChance(int cell)
    {
        double unmarked = 1 - backgrounds[exposures.CellExercises[cell]];
        for (int i = 0; i < chances.Length; i++)
        {
            unmarked *= (masks[cell] >> i & 1) == 1 ? 1 - chances[i] : 1;
        }

        return 1 - unmarked;
    }

    private void Refresh()
    {
        for (int cell = 0; cell < masks.Length; cell++)
        {
            markedChances[cell] = MarkedChance(cell);
        }
    }

    /// <summary>The candidates of a mark with how likely each is, given all chances.</summary>
    private (int Cell, double Likely, int Named)[] Likely(int mark)
    {
        (int Cell, double Weight, int Named)[] among = candidates[mark];
        if (among.Length == 1)
        {
            return [among[0] with { Weight = 1 }];
        }

        double[] odds = [.. among.Select(one => one.Weight * Odds(one.Cell, one.Named))];
        double sum = odds.Sum();
        return [.. among.Select((one, i) => one with { Weight = odds[i] / sum })];
    }

    private double Odds(int cell, int named)
    {
        double marked = markedChances[cell];
        double meant = named == 0 ? marked : 1 - chances.Index().Aggregate(1 - backgrounds[exposures.CellExercises[cell]], (rest, chance) => (named >> chance.Index & 1) == 1 ? rest * (1 - chance.Item) : rest);
        return meant / (1 - marked);
    }

    /// <summary>How much of a mark in this cell is put down to one pitch: all of it, in shares, when the mark named weak pitches.</summary>
    private double Blame(int cell, int named, int index)
    {
        int weak = named & ((1 << 30) - 1);
        if (named != 0)
        {
            return (weak >> index & 1) / (double)Math.Max(1, int.PopCount(weak));
        }

        return (masks[cell] >> index & 1) * chances[index] / markedChances[cell];
    }

    private double Round()
    {
        double[] background = new double[backgrounds.Length];
        Array.Clear(faults);
        for (int mark = 0; mark < marks.Count; mark++)
        {
            foreach ((int cell, double likely, int named) in Likely(mark))
            {
                double part = likely * marks[mark].Share;
                for (int i = 0; i < chances.Length; i++)
                {
                    faults[i] += part * Blame(cell, named, i);
                }

                int exercise = exposures.CellExercises[cell];
                background[exercise] += part * (named == 0 ? backgrounds[exercise] / markedChances[cell] : (named & ((1 << 30) - 1)) == 0 ? 1 : 0);
            }
        }

        double change = Math.Max(Move(chances, i => faults[i] / Math.Max(1, exposed[i])), MoveBackgrounds(background));
        Refresh();
        return change;
    }

    private double MoveBackgrounds(double[] background)
    {
        double usual = background.Sum() / Math.Max(1, exerciseCounts.Sum());
        return Move(backgrounds, i => (background[i] + (Lean * usual)) / (exerciseCounts[i] + Lean));
    }

    private static double Move(double[] values, Func<int, double> target)
    {
        double most = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double next = Math.Clamp(target(i), LeastChance, MostChance);
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

        for (int mark = 0; mark < marks.Count; mark++)
        {
            sum += marks[mark].Share * Math.Log(candidates[mark].Sum(one => one.Weight * Odds(one.Cell, one.Named)));
        }

        return sum;
    }

    /// <summary>The variance that comes from not knowing which rung was meant.</summary>
    private double Uncertainty(int index) => Enumerable.Range(0, marks.Count).Sum(mark =>
    {
        double meant = Likely(mark).Sum(one => (masks[one.Cell] >> index & 1) * one.Likely);
        return marks[mark].Share * meant * (1 - meant);
    });
}
