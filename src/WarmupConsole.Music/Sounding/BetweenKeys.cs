namespace WarmupConsole.Music.Sounding;

/// <summary>How the piano leads to the next key, within the breath (common practice, all three).</summary>
public enum BetweenKeys
{
    /// <summary>The tonic chord of the next key.</summary>
    Tonic,

    /// <summary>The dominant seventh of the next key, then its tonic.</summary>
    Dominant,

    /// <summary>The tonic chord of the key just sung, then every voice moves to that of the next key.</summary>
    Chromatic,
}
