using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>
/// A rehearsal without a warm-up is possible once or twice before a concert, weeks apart, with the singers told (common practice).
/// Without a date nothing about the calendar is judged.
/// </summary>
internal sealed class BareRehearsalRule(IReadOnlyList<Plan> earlier) : IPlanRule
{
    private const int WeeksBeforeConcert = 12;
    private const int LeastDaysApart = 14;
    private const int Most = 2;

    public string Name => "bare-rehearsal";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        if (warmup.Plan.Bare is not { } bare)
        {
            yield break;
        }

        if (!bare.Told)
        {
            yield return Warn(PlanTexts.BareNotTold);
        }

        foreach (string sentence in warmup.Plan.Date is { } date ? InCalendar(warmup.Choir, date) : [])
        {
            yield return Warn(sentence);
        }
    }

    private PlanRemark Warn(string sentence) => new(PlanSeverity.Warning, Name, null, sentence, "bare");

    private IEnumerable<string> InCalendar(Choir choir, DateOnly date)
    {
        if (!choir.Concerts.Any(concert => concert.Date >= date && concert.Date <= date.AddDays(7 * WeeksBeforeConcert)))
        {
            yield return PlanTexts.BareWithoutConcert(WeeksBeforeConcert);
        }

        DateOnly since = choir.Concerts.Where(concert => concert.Date < date).Select(concert => concert.Date).DefaultIfEmpty(DateOnly.MinValue).Max();
        DateOnly[] others = [.. earlier.Where(plan => plan.Bare is not null).Select(plan => plan.Date).OfType<DateOnly>().Where(day => day > since && day < date)];
        if (others.Length >= Most)
        {
            yield return PlanTexts.BareTooOften(others.Length + 1, Most);
        }

        if (others.Length > 0 && date.DayNumber - others.Max().DayNumber is var days && days < LeastDaysApart)
        {
            yield return PlanTexts.BareTooSoon(days, LeastDaysApart);
        }
    }
}
