using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Planning.Choosing;
using WarmupConsole.Sessions.Planning.Seasons;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>The offers of one evening as a problem for the search.</summary>
internal sealed class OfferTable
{
    private const int MillisecondsInMinute = 60_000;

    /// <summary>A tenth of a second within the 15 that are promised, since each step is counted in whole milliseconds.</summary>
    private const int ToleranceMilliseconds = 14_900;

    private const int LongFrom = 20;
    private const int MostSteps = 12;

    private readonly NextPlanInput _input;
    private readonly OfferBook _book;
    private readonly Offer[] _offers;

    internal OfferTable(NextPlanInput input, OfferBook book, IEnumerable<Offer> offers)
    {
        (_input, _book) = (input, book);
        _offers = [.. offers.OrderBy(offer => offer.Order)];
        Problem = new()
        {
            Choices = [.. _offers.Select(offer => offer.Choice)],
            Aims = [.. book.Wishes.Select(wish => wish.Points)],
            Shortest = (input.MinutesOf * MillisecondsInMinute) - ToleranceMilliseconds,
            Longest = (input.MinutesOf * MillisecondsInMinute) + ToleranceMilliseconds,
            MostSteps = Math.Clamp((input.MinutesOf / 2) + 2, 4, MostSteps),
            MostNew = book.Season.Phase == SeasonPhase.ConcertWeek ? 0 : 1,
            Bands = Bands(),
        };
    }

    internal PlanProblem Problem { get; }

    internal NoteNaming Notes => _input.Choir.Notes;

    internal IReadOnlyList<Offer> Offers => _offers;

    /// <summary>The best plan that takes no part where it is to be spared; where none keeps the limits, one that takes none beyond what is easy; else the best of all.</summary>
    internal Chosen Best() => Whole(offer => !offer.IsCrossing) ?? Whole(offer => !offer.IsOverstraining) ?? BestOf(_offers, Problem);

    /// <summary>The best of some offers, or null when they are all there are or no plan of them keeps the limits.</summary>
    private Chosen? Whole(Func<Offer, bool> isMeant)
    {
        Offer[] some = [.. _offers.Where(isMeant)];
        return some.Length < _offers.Length && BestOf(some, Problem with { Choices = [.. some.Select(offer => offer.Choice)] }) is { IsWhole: true } best ? best : null;
    }

    private static Chosen BestOf(Offer[] offers, PlanProblem problem)
    {
        ChosenPlan best = PlanSearch.Best(problem);
        return new([.. best.Choices.Select(choice => offers[choice])], best.Value, best.IsWhole);
    }

    /// <summary>The step that an error or a warning of the check is about, or null.</summary>
    internal int? Objection(Chosen chosen)
    {
        Warmup warmup = new(_input.Choir, new() { Minutes = _input.MinutesOf, Steps = [.. chosen.Steps.Select(offer => offer.Step)] }, [.. chosen.Steps.Select(offer => offer.Ready)]);
        return PlanCheck.Check(warmup).FirstOrDefault(remark => remark is { Severity: not PlanSeverity.Hint, Step: not null })?.Step;
    }

    internal OfferTable Without(Offer offer) => new(_input, _book, _offers.Where(other => other != offer));

    /// <summary>What a variant had is worth less in the next one.</summary>
    internal OfferTable Without(Chosen variant)
    {
        HashSet<int> had = [.. variant.Steps.Select(offer => offer.Choice.Exercise)];
        return new(_input, _book, _offers.Select(offer => !had.Contains(offer.Choice.Exercise) ? offer : offer with
        {
            Own = [.. offer.Own, new(PlanPoints.HadInVariant, NextPlanTexts.Varied)],
            Choice = offer.Choice with { Own = offer.Choice.Own + PlanPoints.HadInVariant },
        }));
    }

    /// <summary>Least and most steps of each part of a warm-up, as far as there are exercises.</summary>
    private (int Least, int Most)[] Bands()
    {
        bool isLong = _input.MinutesOf >= LongFrom;
        (int Least, int Most)[] wished = [(1, 1), (1, isLong ? 2 : 1), (1, isLong ? 3 : 2), (0, 1), (2, Math.Clamp(_input.MinutesOf / 3, 3, 6)), (1, 1)];
        return [.. wished.Index().Select(band => (Math.Min(band.Item.Least, ExercisesIn((Band)band.Index)), band.Item.Most))];
    }

    private int ExercisesIn(Band band) => _offers.Where(offer => offer.Choice.Band == band).Select(offer => offer.Choice.Exercise).Distinct().Count();
}
