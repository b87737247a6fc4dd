namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What each step of a plan is worth in the company of the others: what the plan would lose without it.</summary>
internal sealed class StepWorths
{
    private const int MostReasons = 4;
    private const int MostPurposes = 2;

    private readonly IReadOnlyList<Wish> _wishes;
    private readonly Dictionary<int, int> _times;

    internal StepWorths(IReadOnlyList<Wish> wishes, IReadOnlyList<Offer> steps)
    {
        _wishes = wishes;
        _times = steps.SelectMany(step => step.Choice.Aims).CountBy(aim => aim).ToDictionary();
    }

    /// <summary>Its own points and those of what only it serves, or serves once more.</summary>
    internal int ValueOf(Offer offer) => Math.Max(0, offer.Choice.Own + offer.Choice.Aims.Sum(PointsLost));

    /// <summary>Its points one by one, the most first; what it answers is told even where other steps answer it enough.</summary>
    internal IEnumerable<OwnPoints> PartsOf(Offer offer) => offer.Own
        .Concat(offer.Choice.Aims.Select(aim => new OwnPoints(PointsLost(aim), _wishes[aim].WordsOf(offer.Ready), _wishes[aim].Answer.Length > 0)))
        .Where(part => part.Points != 0 || part.IsReason)
        .OrderByDescending(part => part.Points);

    /// <summary>The findings and needs that it serves.</summary>
    internal IEnumerable<Wish> AnsweredBy(Offer offer) => offer.Choice.Aims.Select(aim => _wishes[aim]).Where(wish => wish.Answer.Length > 0);

    /// <summary>Why it is there: what it answers, then whatever brings most.</summary>
    internal IEnumerable<string> ReasonsOf(Offer offer)
    {
        Wish[] served = [.. offer.Choice.Aims.Select(aim => _wishes[aim]).Where(wish => wish.IsTold && wish.Words.Length > 0)];
        Need[] heard = [.. served.Select(wish => wish.Heard).OfType<Need>()];
        IEnumerable<string> noted = served.Where(wish => wish.Kind < WishKind.Purpose && wish.Heard is null).OrderBy(wish => wish.Kind).Select(wish => wish.WordsOf(offer.Ready))
            .Concat(heard.Length == 0 ? [] : [NextPlanTexts.Answers(heard)]);
        IEnumerable<string> own = offer.Own.Where(part => part.IsReason).OrderByDescending(part => part.Points).Select(part => part.Words);
        string[] trained = [.. served.Where(wish => wish.Kind == WishKind.Purpose).OrderByDescending(wish => wish.Points[0]).Take(MostPurposes).Select(wish => wish.Words)];
        IEnumerable<string> habit = served.Where(wish => wish.Kind == WishKind.Habit).Select(wish => wish.Words);
        return noted.Concat(own.Concat(habit).Concat(trained).Take(MostReasons)).Distinct();
    }

    private int PointsLost(int aim)
    {
        IReadOnlyList<int> points = _wishes[aim].Points;
        return _times[aim] <= points.Count ? points[_times[aim] - 1] : 0;
    }
}
