namespace WarmupConsole.Music.Repertoire;

/// <summary>The bars in the order in which they are played: repeats, endings, back to the beginning or to a sign, to the coda, to the end.</summary>
public static class PlayedOrder
{
    /// <summary>A score that would play more bars than this is cut off: its signs lead in a circle.</summary>
    public const int MostBars = 20_000;

    /// <summary>Indices of bars from 0. After a leap back nothing is repeated again (common practice), and the last ending is taken.</summary>
    public static IReadOnlyList<int> Of(IReadOnlyList<ScoreBar> bars)
    {
        List<int> played = [];
        Place place = new(0, 0, 1, false);
        while (place.Bar >= 0 && place.Bar < bars.Count && played.Count < MostBars)
        {
            place = Step(bars, place, played);
        }

        return played;
    }

    private static Place Step(IReadOnlyList<ScoreBar> bars, Place place, List<int> played)
    {
        if (bars[place.Bar].Jumps is not { } jumps)
        {
            played.Add(place.Bar);
            return place with { Bar = place.Bar + 1 };
        }

        place = jumps.RepeatStarts && place.RepeatFrom != place.Bar ? place with { RepeatFrom = place.Bar, Time = 1 } : place;
        if (jumps.Endings.Count > 0 && !IsPlayed(bars, place, jumps))
        {
            return place with { Bar = place.Bar + 1 };
        }

        played.Add(place.Bar);
        return After(bars, place, jumps);
    }

    private static Place After(IReadOnlyList<ScoreBar> bars, Place place, BarJumps jumps) => place.IsBack
        ? OnTheWayBack(bars, place, jumps)
        : TimesAt(bars, place, jumps) is var times && times > place.Time
            ? place with { Bar = place.RepeatFrom, Time = place.Time + 1 }
            : Onward(bars, place, jumps, times > 0 || LeavesEndings(bars, place, jumps));

    private static Place OnTheWayBack(IReadOnlyList<ScoreBar> bars, Place place, BarJumps jumps)
    {
        if (jumps.Fine)
        {
            return place with { Bar = -1 };
        }

        int? coda = jumps.ToCoda.Length > 0 ? Find(bars, bar => bar.Coda == jumps.ToCoda) : null;
        return place with { Bar = coda ?? place.Bar + 1 };
    }

    private static Place Onward(IReadOnlyList<ScoreBar> bars, Place place, BarJumps jumps, bool beginsAnew)
    {
        Place on = place with { Bar = place.Bar + 1 };
        on = beginsAnew ? on with { RepeatFrom = on.Bar, Time = 1 } : on;
        int? back = jumps.DaCapo ? 0 : jumps.DalSegno.Length > 0 ? Find(bars, bar => bar.Segno == jumps.DalSegno) : null;
        return back is { } bar ? on with { Bar = bar, IsBack = true } : on;
    }

    /// <summary>How often the stretch that ends here is played: once for each ending where there are several.</summary>
    private static int TimesAt(IReadOnlyList<ScoreBar> bars, Place place, BarJumps jumps) =>
        jumps.RepeatTimes > 0 && jumps.Endings.Count > 0 && LaterEnding(bars, place.Bar) ? jumps.Endings.Max() + 1 : jumps.RepeatTimes;

    private static bool LeavesEndings(IReadOnlyList<ScoreBar> bars, Place place, BarJumps jumps) =>
        jumps.Endings.Count > 0 && (place.Bar + 1 >= bars.Count || bars[place.Bar + 1].Jumps?.Endings is not { Count: > 0 });

    /// <summary>On the way back an ending is played when none of a later time follows it.</summary>
    private static bool IsPlayed(IReadOnlyList<ScoreBar> bars, Place place, BarJumps jumps) =>
        place.IsBack ? !LaterEnding(bars, place.Bar) : jumps.Endings.Contains(place.Time);

    /// <summary>True when an ending for a later time follows the one that a bar belongs to.</summary>
    private static bool LaterEnding(IReadOnlyList<ScoreBar> bars, int bar)
    {
        int last = bars[bar].Jumps!.Endings.Max();
        int next = bar + 1;
        while (next < bars.Count && bars[next].Jumps?.Endings is { Count: > 0 } same && same.Max() == last)
        {
            next++;
        }

        return next < bars.Count && bars[next].Jumps?.Endings is { Count: > 0 } other && other.Max() > last;
    }

    private static int? Find(IReadOnlyList<ScoreBar> bars, Func<BarJumps, bool> isMeant)
    {
        for (int bar = 0; bar < bars.Count; bar++)
        {
            if (bars[bar].Jumps is { } jumps && isMeant(jumps))
            {
                return bar;
            }
        }

        return null;
    }

    /// <param name="Bar">The bar that comes.</param>
    /// <param name="RepeatFrom">Where the repeated stretch began.</param>
    /// <param name="Time">Which time it is played, from 1.</param>
    /// <param name="IsBack">True after a leap back.</param>
    private readonly record struct Place(int Bar, int RepeatFrom, int Time, bool IsBack);
}
