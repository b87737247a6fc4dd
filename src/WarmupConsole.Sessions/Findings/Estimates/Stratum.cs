namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Rungs that may be compared with each other: those of one step in one session.</summary>
/// <param name="Size">How many.</param>
/// <param name="Exposed">How many of them have what is asked about.</param>
/// <param name="Marked">How many of all were marked.</param>
/// <param name="MarkedExposed">How many of those that have it were marked.</param>
public readonly record struct Stratum(int Size, int Exposed, int Marked, int MarkedExposed)
{
    /// <summary>False when it cannot tell anything: nothing marked, everything marked, or all or none have it.</summary>
    internal bool IsTelling => Exposed > 0 && Exposed < Size && Marked > 0 && Marked < Size;

    internal double Mean => (double)Marked * Exposed / Size;

    internal double Variance => Mean * (Size - Exposed) / Size * (Size - Marked) / (Size - 1);
}
