namespace WarmupConsole.Music.Hearing;

/// <summary>What is likely to be played next. All are pitch classes, 0–11.</summary>
/// <param name="Present">The tonic of the present key, or null before the first.</param>
/// <param name="Next">The tonic of the key that follows in the ladder, or null at its end.</param>
/// <param name="Back">The tonic of the key before, as after turning round; null before the second.</param>
public sealed record KeyExpectation(int? Present, int? Next, int? Back)
{
    private const double IsNext = 0.74;
    private const double IsSame = 0.06;
    private const double IsBack = 0.05;
    private const double IsAny = 0.15 / KeyHearing.Classes;

    /// <summary>How likely the next key has this tonic; the shares are our own estimate of how directors go on.</summary>
    internal double ShareOf(int tonic) => IsAny + (tonic == Next ? IsNext : 0) + (tonic == Present ? IsSame : 0) + (tonic == Back ? IsBack : 0);
}
