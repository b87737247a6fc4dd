namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// Finds the weak pitches of one part and kind, one after another: what the marks crowd on passes the test, and of all that pass, the pitch
/// with the strongest evidence is taken. Marks that it explains are out of the way when the next is looked for.
/// </summary>
internal sealed class WeakPitches(Exposures exposures, IReadOnlyList<PartMark> marks, double threshold)
{
    /// <summary>More at once are not told apart; nor would one rehearsal answer them.</summary>
    private const int Most = 4;

    /// <summary>Only the likeliest are fitted.</summary>
    private const int MostCandidates = 8;

    /// <summary>One evening may have been a cold: a finding needs two.</summary>
    private const int LeastSessions = 2;
    private const double LeastBlamed = 2.5;

    /// <summary>Chosen pitches with their p-values, in the order they were found.</summary>
    internal IReadOnlyList<(int Pitch, double Chance)> Find()
    {
        List<(int Pitch, double Chance)> found = [];
        NoisyOr fit = Fit(found, []);
        while (found.Count < Most && Best(found, fit) is { } best)
        {
            found.Add(best);
            fit = Fit(found, []);
        }

        return found;
    }

    private NoisyOr Fit(IEnumerable<(int Pitch, double Chance)> found, IReadOnlyList<int> more) =>
        NoisyOr.Fit(exposures, marks, [.. found.Select(pitch => pitch.Pitch), .. more]);

    private (int Pitch, double Chance)? Best(List<(int Pitch, double Chance)> found, NoisyOr fit)
    {
        int[] known = [.. found.Select(pitch => pitch.Pitch)];
        HashSet<int> marked = [.. Enumerable.Range(0, marks.Count).Select(fit.RowOf)];
        (int Pitch, double Chance, NoisyOr Fit)[] fits =
        [
            .. PitchTests.Of(exposures.Rows, marked, known).Where(test => test.Value <= threshold)
                .OrderBy(test => test.Value).ThenBy(test => test.Key).Take(MostCandidates)
                .Select(test => (test.Key, test.Value, Fit(found, [test.Key]))),
        ];
        (int Pitch, double Chance, NoisyOr Fit)[] supported = [.. fits.Where(one => IsSupported(one.Fit, one.Pitch))];
        return supported.Length == 0 ? null : supported.MaxBy(Evidence) is var best ? (best.Pitch, best.Chance) : null;
    }

    /// <summary>
    /// Two measures of the same evidence, added: how likely the pitch makes the marks over all ladders, and how little chance explains them within each. The
    /// first is misled by a pitch that fails on one vowel only, the second knows nothing of ladders in which every key has the pitch.
    /// </summary>
    private static double Evidence((int Pitch, double Chance, NoisyOr Fit) one) => one.Fit.LogLikelihood - Math.Log(Math.Max(double.Epsilon, one.Chance));

    private static bool IsSupported(NoisyOr fit, int pitch)
    {
        (PartMark Mark, double Meant, double Blamed)[] blamed = [.. fit.Attribution(pitch).Where(mark => mark.Blamed >= 0.5)];
        return blamed.Sum(mark => mark.Blamed) >= LeastBlamed && blamed.Select(mark => mark.Mark.Session).Distinct().Count() >= LeastSessions;
    }
}
