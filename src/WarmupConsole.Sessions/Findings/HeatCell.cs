namespace WarmupConsole.Sessions.Findings;

/// <summary>A part at a pitch: all kinds of trouble together.</summary>
/// <param name="Marked">Keys with the pitch that were marked; a mark without a pitch counts for all pitches of its key.</param>
/// <param name="Sung">Keys with the pitch that were sung.</param>
/// <param name="IsEasy">True inside the comfortable range.</param>
public readonly record struct HeatCell(double Marked, double Sung, bool IsEasy)
{
    /// <summary>0–1.</summary>
    public double Share => Math.Min(1, Marked / Sung);
}
