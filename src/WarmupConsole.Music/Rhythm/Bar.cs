namespace WarmupConsole.Music.Rhythm;

/// <summary>
/// One bar. Patterns have none of their own: written out, each stretch of a warm-up (a lead-in, a pattern, a breath) begins with a bar, so
/// that every key begins on a bar line.
/// </summary>
/// <param name="Start">From the beginning of the stretch.</param>
/// <param name="Length">How long; more than zero.</param>
public readonly record struct Bar(Beats Start, Beats Length)
{
    private static readonly Beats Usual = Beats.FromBeats(4);
    private static readonly Beats Three = Beats.FromBeats(3);

    /// <summary>Its time signature.</summary>
    public Meter Meter => Meter.For(Length);

    /// <summary>Where it is over.</summary>
    public Beats End => Start + Length;

    /// <summary>
    /// The bars of a stretch: of four beats, of three where only three divide it. What is left over is a bar of its own, or
    /// lengthens the last one when it is no more than a beat.
    /// </summary>
    public static IReadOnlyList<Bar> Of(Beats stretch)
    {
        Beats usual = stretch.Ticks % Usual.Ticks != 0 && stretch.Ticks % Three.Ticks == 0 ? Three : Usual;
        long whole = stretch.Ticks / usual.Ticks;
        Beats left = stretch - (usual * whole);
        List<Bar> bars = [.. Enumerable.Range(0, (int)whole).Select(index => new Bar(usual * index, usual))];
        if (left > Beats.Zero && left <= Beats.FromBeats(1) && whole > 0)
        {
            bars[^1] = bars[^1] with { Length = usual + left };
        }
        else if (left > Beats.Zero)
        {
            bars.Add(new(usual * whole, left));
        }

        return bars;
    }
}
