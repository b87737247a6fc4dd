namespace WarmupConsole.Music.Sounding;

/// <summary>How the piano goes with an exercise.</summary>
/// <param name="Style">What it plays while the choir sings.</param>
/// <param name="DoublesMelody">True to play the melody as well; means nothing with <see cref="AccompanimentStyle.CueOnly"/> and <see cref="AccompanimentStyle.Melody"/>.</param>
/// <param name="Between">How it leads to the next key.</param>
/// <param name="Click">Which beats it taps.</param>
public sealed record PianoPart(AccompanimentStyle Style, bool DoublesMelody, BetweenKeys Between, Click Click)
{
    /// <summary>Melody and whole chords, the dominant seventh between two keys, no taps.</summary>
    public static PianoPart Usual { get; } = new(AccompanimentStyle.Block, true, BetweenKeys.Dominant, Click.None);

    /// <summary>True when nobody helps the choir to keep its pitch.</summary>
    public bool IsUnaccompanied => Style == AccompanimentStyle.CueOnly;

    /// <summary>True when the melody sounds on the piano.</summary>
    public bool PlaysMelody => Style == AccompanimentStyle.Melody || (DoublesMelody && !IsUnaccompanied);
}
