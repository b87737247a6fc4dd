namespace WarmupConsole.Music.Sounding;

/// <summary>What a step, a plan or an exercise says about the piano; null is left to whoever is asked next.</summary>
/// <param name="Style">What it plays while the choir sings.</param>
/// <param name="DoublesMelody">Whether it plays the melody too.</param>
/// <param name="Between">How it leads to the next key.</param>
/// <param name="Click">Which beats it taps.</param>
public sealed record PianoWish(AccompanimentStyle? Style = null, bool? DoublesMelody = null, BetweenKeys? Between = null, Click? Click = null)
{
    /// <summary>Says nothing.</summary>
    public static PianoWish None { get; } = new();

    /// <summary>What this one leaves open, as another one says it.</summary>
    public PianoWish Or(PianoWish other) =>
        new(Style ?? other.Style, DoublesMelody ?? other.DoublesMelody, Between ?? other.Between, Click ?? other.Click);

    /// <summary>What is left open is as usual.</summary>
    public PianoPart OrUsual() => new(
        Style ?? PianoPart.Usual.Style,
        DoublesMelody ?? PianoPart.Usual.DoublesMelody,
        Between ?? PianoPart.Usual.Between,
        Click ?? PianoPart.Usual.Click);
}
