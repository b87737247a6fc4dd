namespace WarmupConsole.Music.Sounding;

/// <summary>What a step from one grip to the next costs: the way of every voice, and what sounds bad in it. In semitones, with faults far above any way.</summary>
public static class Motion
{
    /// <summary>How far a voice of the right hand moves at most where the chords allow it.</summary>
    public const int WidestOfRight = 7;

    /// <summary>How far the bass moves at most where the chords allow it.</summary>
    public const int WidestOfBass = 10;

    private const int Inversion = 6;
    private const int TooWide = 100;
    private const int ParallelInside = 60;
    private const int ParallelWithMelody = 2000;
    private const int MiddleOfRight = 61;
    private const int MiddleOfBass = 45;

    /// <summary>How far a grip lies from the middle of each hand.</summary>
    internal static int Place(Grip grip) =>
        (Math.Abs(grip.Middle - MiddleOfRight) + Math.Abs(grip.Bass - MiddleOfBass)) / 2 + (grip.IsInverted ? Inversion : 0);

    /// <summary>From one grip to the next, while lines of the choir move from one note to another.</summary>
    internal static int Between(Grip from, Grip to, IReadOnlyList<(int From, int To)> lines)
    {
        int cost = 0;
        for (int voice = 0; voice < Grip.Voices; voice++)
        {
            int way = Math.Abs(to[voice] - from[voice]);
            cost += voice == 0 ? way / 2 : way;
            cost += way > (voice == 0 ? WidestOfBass : WidestOfRight) ? TooWide : 0;
            cost += lines.Count(line => IsParallel(from[voice], to[voice], line.From, line.To)) * ParallelWithMelody;
            for (int above = voice + 1; above < Grip.Voices; above++)
            {
                cost += IsParallel(from[voice], to[voice], from[above], to[above]) ? ParallelInside : 0;
            }
        }

        return cost;
    }

    /// <summary>Both move in one direction, from a fifth to a fifth or from an octave to an octave.</summary>
    internal static bool IsParallel(int from, int to, int otherFrom, int otherTo)
    {
        int before = Apart(from, otherFrom);
        return Math.Sign(to - from) * Math.Sign(otherTo - otherFrom) > 0
            && before == Apart(to, otherTo)
            && (before == 0 || before == (from < otherFrom ? 7 : 5));
    }

    private static int Apart(int a, int b) => (((b - a) % 12) + 12) % 12;
}
