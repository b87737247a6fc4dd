using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Music.Hearing;

/// <summary>
/// Recognises the keys in which an exercise is played, note by note: a hidden Markov model whose places are the cue chords and the
/// notes of the pattern, in the present key and in each of the twelve that may come (the forward algorithm, as in any text on
/// such models). Chords may be rolled, without their bass, in any octave; notes may be wrong or missing; time plays no part. A value.
/// </summary>
public sealed class KeyHearing
{
    /// <summary>Pitch classes in an octave.</summary>
    internal const int Classes = 12;

    // Two notes at least speak for a key before it counts, and then it must be as good as certain.
    private const double Certain = 0.95;
    private const double Likely = 0.5;
    private const double Leaving = 0.04;
    private const double LeavingAtEnd = 0.9;
    private const double Lost = 0.004;
    private const double Found = 0.1;
    private const int CuePlaces = 2;

    private readonly HeardPattern _pattern;

    /// <summary>By block: the present key, then each pitch class as the next tonic; in a block, by place. Last: lost.</summary>
    private readonly double[][] _beliefs;
    private readonly double _lost;

    private KeyHearing(HeardPattern pattern, double[][] beliefs, double lost) => (_pattern, _beliefs, _lost) = (pattern, beliefs, lost);

    /// <summary>Nothing of the exercise was heard yet.</summary>
    public static KeyHearing Begin(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        HeardPattern pattern = HeardPattern.Of(exercise);
        return new(pattern, Empty(pattern), 1);
    }

    /// <summary>The same after one more note, and the tonic of a key that has just been recognised, as a pitch class; null while the present one goes on.</summary>
    /// <param name="midi">The note.</param>
    /// <param name="expected">What is likely.</param>
    public (KeyHearing Next, int? Tonic) After(int midi, KeyExpectation expected)
    {
        ArgumentNullException.ThrowIfNull(expected);
        double[][] after = Empty(_pattern);
        double begins = _lost * (expected.Present is null ? 1 - Found : Found);
        for (int block = 0; block < _beliefs.Length; block++)
        {
            begins += Move(_beliefs[block], after[block], TonicOf(block, expected), midi);
        }

        Start(after, begins, midi, expected);
        double lost = ((_lost * (1 - Found)) + (_beliefs.Sum(block => block.Sum()) * Lost)) / Classes;
        double sum = after.Sum(block => block.Sum()) + lost;
        foreach (double[] block in after)
        {
            for (int place = 0; place < block.Length; place++)
            {
                block[place] /= sum;
            }
        }

        return Decide(new(_pattern, after, lost / sum), expected);
    }

    /// <summary>A key that begins anew from here on, by another way than the ear: the present one.</summary>
    public KeyHearing InKey()
    {
        double[][] beliefs = Empty(_pattern);
        beliefs[0][1] = 1;
        return new(_pattern, beliefs, 0);
    }

    private (KeyHearing Next, int? Tonic) Decide(KeyHearing next, KeyExpectation expected)
    {
        for (int tonic = 0; tonic < Classes; tonic++)
        {
            double[] block = next._beliefs[tonic + 1];

            // A chord in the present key may end a key as well as begin it: only its pattern tells that it is sung again.
            double now = tonic == expected.Present ? block.Skip(CuePlaces + 1).Sum() : block.Sum();
            if (now >= Certain && _beliefs[tonic + 1].Sum() >= Likely)
            {
                double[][] settled = Empty(_pattern);
                block.CopyTo(settled[0], 0);
                return (new(_pattern, settled, next._lost), tonic);
            }
        }

        return (next, null);
    }

    /// <summary>What goes on in one key; returns how much of it ends there.</summary>
    private double Move(double[] before, double[] after, int? tonic, int midi)
    {
        double leaves = 0;
        int tone = tonic is { } root ? (((midi - root) % Classes) + Classes) % Classes : 0;
        for (int place = 0; place < before.Length && tonic is not null; place++)
        {
            double belief = before[place];
            double ends = place == before.Length - 1 ? LeavingAtEnd : Leaving;
            leaves += belief * ends;
            Spread(belief * (1 - ends), place, tone, after);
        }

        return leaves;
    }

    private void Spread(double belief, int place, int tone, double[] after)
    {
        (double stay, double one, double two) = place switch
        {
            0 => (0.65, 0.32, 0.03),
            1 => (0.60, 0.36, 0.04),
            _ => (0.16, 0.80, 0.04),
        };
        after[place] += belief * stay * (place < CuePlaces ? _pattern.Places[place][tone] : _pattern.Beside[tone]);
        if (place + 1 < after.Length)
        {
            after[place + 1] += belief * one * _pattern.Places[place + 1][tone];
        }

        if (place + 2 < after.Length)
        {
            after[place + 2] += belief * two * _pattern.Places[place + 2][tone];
        }
    }

    /// <summary>Each key begins with the dominant seventh, the tonic chord, or at once with the pattern.</summary>
    private void Start(double[][] after, double begins, int midi, KeyExpectation expected)
    {
        double[] shares = [0.25, 0.50, 0.25];
        for (int tonic = 0; tonic < Classes; tonic++)
        {
            int tone = (((midi - tonic) % Classes) + Classes) % Classes;
            for (int place = 0; place < shares.Length && place < after[tonic + 1].Length; place++)
            {
                after[tonic + 1][place] += begins * expected.ShareOf(tonic) * shares[place] * _pattern.Places[place][tone];
            }
        }
    }

    private static int? TonicOf(int block, KeyExpectation expected) => block == 0 ? expected.Present : block - 1;

    private static double[][] Empty(HeardPattern pattern) => [.. Enumerable.Range(0, Classes + 1).Select(_ => new double[pattern.Places.Length])];
}
