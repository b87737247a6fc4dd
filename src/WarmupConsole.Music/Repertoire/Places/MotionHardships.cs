using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Repertoire.Places;

/// <summary>What is hard about the way from tone to tone: leaps, quick notes, half-steps in a row.</summary>
internal static class MotionHardships
{
    private const int Large = 8;
    private const int Octave = 12;
    private const int Fourth = 5;
    private const int ThirdOfLetters = 2;
    private const double MostForLeap = 3;
    private const double ForDissonance = 1.5;
    private const double QuickSeconds = 0.25;
    private const double QuickPoints = 0.25;
    private const int QuickInARow = 4;
    private const double HalfStepPoints = 0.5;
    private const int HalfStepsInARow = 3;

    /// <summary>A rest longer than this ends a leap: it is found anew.</summary>
    private const double LongestRest = 2;

    internal static IEnumerable<Hardship> Of(IReadOnlyList<SungTone> tones, LineView view) =>
        [.. tones.Zip(tones.Skip(1)).SelectMany(pair => Leaps(pair.First, pair.Second, view.Range)), .. Quick(tones), .. HalfSteps(tones)];

    private static IEnumerable<Hardship> Leaps(SungTone from, SungTone to, VoiceRange range)
    {
        (Interval move, Pitch lands) = Move(from, to);
        int size = Math.Abs(move.Semitones);
        if (size < Fourth - 1 || to.StartSeconds - from.EndSeconds > LongestRest)
        {
            yield break;
        }

        if (size >= Large)
        {
            yield return new(HardReason.LargeLeap, to.Bar, size == Octave ? 1 : Math.Min(MostForLeap, (size - Fourth) / 3.0), lands, size);
        }

        if (IsDissonant(move))
        {
            yield return new(HardReason.DissonantLeap, to.Bar, ForDissonance, lands, size);
        }

        if (size >= Fourth && !range.Comfortable.Contains(lands.Midi))
        {
            yield return new(HardReason.LeapIntoExtreme, to.Bar, range.Extreme.Contains(lands.Midi) ? ForDissonance : ForDissonance + 1, lands, size);
        }
    }

    /// <summary>Of a divided moment the nearer of its outer notes: the singers divide, nobody leaps there.</summary>
    private static (Interval Move, Pitch Lands) Move(SungTone from, SungTone to)
    {
        (Interval low, Interval high) = (Interval.Between(from.Low, to.Low), Interval.Between(from.High, to.High));
        return Math.Abs(low.Semitones) < Math.Abs(high.Semitones) ? (low, to.Low) : (high, to.High);
    }

    /// <summary>Tritones, sevenths, more than an octave, and whatever is spelled augmented or diminished from a third on.</summary>
    private static bool IsDissonant(Interval move)
    {
        (int semitones, int letters) = (Math.Abs(move.Semitones), Math.Abs(move.Steps));
        return semitones is 6 or 10 or 11 || semitones > Octave || (letters >= ThirdOfLetters && semitones < Octave && !IsPlain(semitones, letters));
    }

    private static bool IsPlain(int semitones, int letters) => (letters, semitones) is (2, 3 or 4) or (3, 5) or (4, 7) or (5, 8 or 9) or (6, 10 or 11);

    private static IEnumerable<Hardship> Quick(IReadOnlyList<SungTone> tones)
    {
        foreach ((int from, int count) in Runs(tones.Count, at => tones[at].Seconds is > 0 and <= QuickSeconds, QuickInARow))
        {
            double rate = count / (tones[from + count - 1].EndSeconds - tones[from].StartSeconds);
            for (int at = from; at < from + count; at++)
            {
                yield return new(HardReason.QuickNotes, tones[at].Bar, QuickPoints, tones[at].High, rate);
            }
        }
    }

    private static IEnumerable<Hardship> HalfSteps(IReadOnlyList<SungTone> tones)
    {
        int[] moves = [.. tones.Zip(tones.Skip(1)).Select(pair => pair.Second.StartSeconds - pair.First.EndSeconds > LongestRest ? 0 : pair.Second.High.Midi - pair.First.High.Midi)];
        foreach (int direction in (int[])[1, -1])
        {
            foreach ((int from, int count) in Runs(moves.Length, at => moves[at] == direction, HalfStepsInARow))
            {
                for (int at = from; at < from + count; at++)
                {
                    yield return new(HardReason.ChromaticRun, tones[at + 1].Bar, HalfStepPoints, tones[at + 1].High, count);
                }
            }
        }
    }

    /// <summary>Stretches of at least so many that are alike.</summary>
    private static IEnumerable<(int From, int Count)> Runs(int length, Func<int, bool> isIn, int least)
    {
        int from = 0;
        for (int at = 0; at <= length; at++)
        {
            if (at < length && isIn(at))
            {
                continue;
            }

            if (at - from >= least)
            {
                yield return (from, at - from);
            }

            from = at + 1;
        }
    }
}
