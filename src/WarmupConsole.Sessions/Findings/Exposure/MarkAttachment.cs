using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Review;

namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>
/// Which rungs a mark may mean. A mark that was moved means the rung it was moved to; a named key, the last rung in that key. Otherwise it
/// is uncertain: the lag spreads it over the rungs that sounded before it, and the rung it was shown at, and the one before that, always keep
/// a share. A named pitch leaves only rungs that hold it. Never meant is a rung that had not begun.
/// </summary>
internal sealed class MarkAttachment(IReadOnlyList<ExposedRung> rungs)
{
    private const double ShareOfLag = 0.75;
    private const double ShareOfShown = 0.15;
    private const double ShareOfBefore = 0.10;
    private const double Least = 0.01;
    private const double NanosecondsASecond = 1e9;

    internal IReadOnlyList<RungWeight> Of(LoggedMark mark, int epoch)
    {
        bool IsShown(int index) => rungs[index].Step == mark.Step && rungs[index].Rung == mark.Rung;
        if (mark.WasMoved)
        {
            return Only(Last(mark, IsShown));
        }

        if (mark.Made.KeyNamed && KeyOf(mark.Made.Key) is { } key)
        {
            return Only(Last(mark, index => (rungs[index].Tonic - key.Midi) % 12 == 0));
        }

        int shown = Last(mark, IsShown);
        List<RungWeight> weights = Spread(mark, epoch, shown >= 0 ? shown : mark.RungsBefore - 1);
        return mark.Made.Pitch is { } pitch ? WithPitch(mark, pitch, weights) : Whole(weights);
    }

    /// <summary>The last rung begun before the mark of which this is true, in its own step if there is one; −1 without any.</summary>
    private int Last(LoggedMark mark, Func<int, bool> isMeant)
    {
        int elsewhere = -1;
        for (int index = mark.RungsBefore - 1; index >= 0; index--)
        {
            bool isMeantHere = isMeant(index);
            if (isMeantHere && rungs[index].Step == mark.Step)
            {
                return index;
            }

            elsewhere = isMeantHere && elsewhere < 0 ? index : elsewhere;
        }

        return elsewhere;
    }

    private static RungWeight[] Only(int index) => index < 0 ? [] : [new(index, 1)];

    private List<RungWeight> Spread(LoggedMark mark, int epoch, int shown)
    {
        List<RungWeight> weights = [];
        Give(weights, shown, ShareOfShown);
        Give(weights, Math.Max(shown - 1, 0), shown < 0 ? 0 : ShareOfBefore);
        double lagged = 0;
        foreach ((int index, double share) in ByLag(mark.Made.Nanoseconds, epoch, mark.RungsBefore))
        {
            Give(weights, index, ShareOfLag * share);
            lagged += share;
        }

        Give(weights, shown, ShareOfLag * (1 - lagged));
        return weights;
    }

    /// <summary>A rung owns the time from its first note to that of the next one, so also the breath and the talk behind it.</summary>
    private IEnumerable<(int Index, double Share)> ByLag(long at, int epoch, int rungsBefore)
    {
        double to = 0;
        for (int index = rungsBefore - 1; index >= 0 && rungs[index].Epoch == epoch && to < LagData.LongestSeconds; index--)
        {
            double from = (at - rungs[index].Start) / NanosecondsASecond;
            if (from > to)
            {
                yield return (index, LagData.Share(to, from));
                to = from;
            }
        }
    }

    private static void Give(List<RungWeight> weights, int index, double share)
    {
        for (int known = 0; known < weights.Count; known++)
        {
            if (weights[known].Rung == index)
            {
                weights[known] = new(index, weights[known].Weight + share);
                return;
            }
        }

        if (index >= 0 && share > 0)
        {
            weights.Add(new(index, share));
        }
    }

    private RungWeight[] WithPitch(LoggedMark mark, int pitch, List<RungWeight> weights)
    {
        bool IsAsked(int index) => rungs[index].Lines.Any(line => line.Has(pitch) && (mark.Made.Parts.Count == 0 || mark.Made.Parts.Contains(line.Part)));
        RungWeight[] asked = Whole([.. weights.Where(weight => IsAsked(weight.Rung))]);
        return asked.Length > 0 ? asked : Only(Last(mark, IsAsked)) is { Length: > 0 } earlier ? earlier : Whole(weights);
    }

    /// <summary>Those that count for anything, made 1 in all; likeliest first, and of equals the last.</summary>
    private static RungWeight[] Whole(List<RungWeight> weights)
    {
        weights.RemoveAll(weight => weight.Weight < Least);
        weights.Sort((a, b) => b.Weight.CompareTo(a.Weight) is not 0 and int order ? order : b.Rung.CompareTo(a.Rung));
        double sum = weights.Sum(weight => weight.Weight);
        return [.. weights.Select(weight => weight with { Weight = weight.Weight / sum })];
    }

    private static Pitch? KeyOf(string? ascii) =>
        Pitch.TryParse(ascii, out Pitch pitch) || Pitch.TryParse(ascii + "4", out pitch) ? pitch : null;
}
