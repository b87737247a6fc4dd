namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>
/// Could the marks have fallen like this by chance? Within each stratum the marks are dealt out over its rungs; the sum over all strata of
/// those that fall on exposed rungs is compared with what was seen (the exact conditional test for 2 × 2 × K tables, one-sided). So evenings,
/// exercises and moods of marking may differ as they like.
/// </summary>
public static class StratifiedTest
{
    /// <summary>The probability of at least as many marked exposed rungs as were seen, 0–1; 1 when the strata tell nothing.</summary>
    public static double PValue(IEnumerable<Stratum> strata)
    {
        ArgumentNullException.ThrowIfNull(strata);
        StratifiedSum sum = new();
        foreach (Stratum stratum in strata)
        {
            sum.Add(stratum);
        }

        return sum.PValue;
    }
}
