namespace WarmupConsole.Music.Repertoire;

/// <summary>What a bar says about the order in which bars are played.</summary>
public sealed record BarJumps
{
    /// <summary>A repeated stretch begins here.</summary>
    public bool RepeatStarts { get; init; }

    /// <summary>How often the stretch that ends here is played in all, or 0 when none ends here; usually 2.</summary>
    public int RepeatTimes { get; init; }

    /// <summary>The times in which the bar is played, such as 1 or 1 and 2; empty when it is no ending.</summary>
    public IReadOnlyList<int> Endings { get; init; } = [];

    /// <summary>After the bar, back to the beginning.</summary>
    public bool DaCapo { get; init; }

    /// <summary>Name of a sign at the bar, or empty.</summary>
    public string Segno { get; init; } = "";

    /// <summary>After the bar, back to the sign of this name; empty for none.</summary>
    public string DalSegno { get; init; } = "";

    /// <summary>Name of a coda at the bar, or empty.</summary>
    public string Coda { get; init; } = "";

    /// <summary>After the bar, on the way back, on to the coda of this name; empty for none.</summary>
    public string ToCoda { get; init; } = "";

    /// <summary>The end, on the way back.</summary>
    public bool Fine { get; init; }
}
