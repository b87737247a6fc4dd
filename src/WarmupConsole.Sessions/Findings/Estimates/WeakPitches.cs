namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// Finds the weak pitches of one part and kind, one after another: what the marks crowd on passes the test, and of all that pass, the pitch
/// with the strongest evidence is taken. Marks that it explains are out of the way when the next is looked for.
/// </summary>
internal sealed class WeakPitches(Exposures exposures, MarkGroups marks, double threshold)
{
    /// <summary>More at once are not told apart; nor would one rehearsal answer them.</summary>
    private const int Most = 4;

    /// <summary>Only the likeliest are fitted.</summary>
    private const int MostCandidates = 8;

    /// <summary>One evening may have been a cold: a finding needs two.</summary>
    private const int LeastSessions = 2;
    private const double LeastBlamed = 2.5;

    /// <summary>Chosen pitches with their p-values, in the order they were found; and the fit of them all.</summary>
    internal (IReadOnlyList<(int Pitch, double Chance)> Found, NoisyOr Fit) Find()
    {
        List<(int Pitch, double Chance)> found = [];
        NoisyOr fit = NoisyOr.Fit(exposures, marks, []);
        while (found.Count < Most && Best([.. found.Select(pitch => pitch.Pitch)], fit) is { } best)
        {
            found.Add((best.Pitch, best.Chance));
            fit = best.Fit;
        }

        return (found, fit);
    }

    private (int Pitch, double Chance, NoisyOr Fit)? Best(int[] known, NoisyOr fit)
    {
        (int Pitch, double Chance, NoisyOr Fit)[] supported =
        [
            .. PitchTests.Of(exposures, fit.Rows(), known).Where(test => test.Value <= threshold)
                .OrderBy(test => test.Value).ThenBy(test => test.Key).Take(MostCandidates)
                .Select(test => (Pitch: test.Key, Chance: test.Value, Fit: NoisyOr.Fit(exposures, marks, [.. known, test.Key], fit)))
                .Where(one => IsSupported(one.Fit, one.Pitch)),
        ];
        return supported.Length == 0 ? null : supported.MaxBy(Evidence);
    }

    /// <summary>
    /// Two measures of the same evidence, added: how likely the pitch makes the marks over all ladders, and how little chance explains them within each. The
    /// first is misled by a pitch that fails on one vowel only, the second knows nothing of ladders in which every key has the pitch.
    /// </summary>
    private static double Evidence((int Pitch, double Chance, NoisyOr Fit) one) => one.Fit.LogLikelihood - Math.Log(Math.Max(double.Epsilon, one.Chance));

    private static bool IsSupported(NoisyOr fit, int pitch)
    {
        double sum = 0;
        HashSet<int> evenings = [];
        foreach ((PartMark mark, _, double blamed) in fit.Attribution(pitch).Where(mark => mark.Blamed >= 0.5))
        {
            sum += blamed;
            evenings.Add(mark.Session);
            if (sum >= LeastBlamed && evenings.Count >= LeastSessions)
            {
                return true;
            }
        }

        return false;
    }
}
