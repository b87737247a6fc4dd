namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Keeps false findings rare although very many questions are asked (Benjamini and Hochberg, 1995).</summary>
public static class FalseFindings
{
    /// <summary>
    /// What a p-value may be at most to count, or −1 when none does. It is the limit itself and not the largest p-value below it: a question
    /// that is asked again with slightly other marks is judged by the same limit.
    /// </summary>
    /// <param name="pValues">Of all questions asked, in any order.</param>
    /// <param name="share">The share of false ones among those that count, 0–1.</param>
    public static double Threshold(IEnumerable<double> pValues, double share)
    {
        double[] ordered = [.. pValues.Order()];
        int last = Array.FindLastIndex([.. ordered.Select((p, rank) => p <= share * (rank + 1) / ordered.Length)], holds => holds);
        return last < 0 ? -1 : share * (last + 1) / ordered.Length;
    }
}
