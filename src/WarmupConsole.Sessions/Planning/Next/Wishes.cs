using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Everything that the next plan should do, each with its points: findings, what was heard and asked, purposes, ranges, habit.</summary>
internal sealed class Wishes(NextPlanInput input, History history, Approach approach, Sparings sparings)
{
    internal IReadOnlyList<Wish> All() =>
    [
        .. input.Findings.Where(IsOfChoir).SelectMany(OfFinding),
        .. Need.AllIn(input).Where(need => !IsFound(need)).SelectMany(OfNeed),
        .. input.Needs.Where(need => need.IsOpenOn(input.Date)).SelectMany(need => OfAsked(need).Concat(OfSpared(need))),
        .. Enum.GetValues<Purpose>().Select(OfPurpose),
        .. input.Choir.Parts.SelectMany(OfRange),
        Focused(new(WishKind.Habit, PlanPoints.Habit, NextPlanTexts.Kept(input.LastDay), step => history.IsInLast(step.Exercise.Id)), _ => false),
    ];

    private bool IsOfChoir(Finding finding) => input.Choir.Parts.Any(part => part.Id == finding.Part);

    /// <summary>A finding weighs what was heard last time as well.</summary>
    private bool IsFound(Need need) => !need.IsAsked && input.Findings.Any(finding => finding.Part == need.Part && finding.Kind == need.Kind && finding.Pitch.Midi == need.Pitch?.Midi);

    private IEnumerable<Wish> OfFinding(Finding finding)
    {
        Target target = new(finding.Part, finding.Pitch, null);
        Sparing[] spared = sparings.Of(finding);
        bool IsMeant(PlanFocus focus) => focus.Finding == finding.Id || focus.Parts.Contains(finding.Part);
        int trend = finding.Trend.Direction switch { TrendDirection.Better => PlanPoints.WhenBetter, TrendDirection.Worse => PlanPoints.WhenWorse, _ => 100 };
        int points = (PlanPoints.Finding + (PlanPoints.FindingPerPercent * Percent(finding.Rate.Low))) * trend / 100;
        string title = FindingText.Title(finding, input.Choir);
        if (spared.Length > 0)
        {
            foreach (Wish less in Less(spared, new(WishKind.Finding, [points, PlanPoints.FindingAgain * trend / 100], NextPlanTexts.Shows(finding, title), _ => false) { Answer = finding.Id, Title = title }))
            {
                yield return Focused(less, IsMeant);
            }

            yield break;
        }

        if (sparings.KeepingFrom(finding.Part, finding.Pitch) is { } keeping)
        {
            yield return Waiting(WishKind.Finding, title, keeping);
            yield break;
        }

        yield return Focused(
            new(WishKind.Finding, [points, PlanPoints.FindingAgain * trend / 100], NextPlanTexts.Answers(finding, title), step => approach.ComesFromBothSides(step, target))
            {
                Answer = finding.Id,
                Title = title,
                Unmet = NextPlanTexts.NoStepFor(title),
                Target = target,
            },
            IsMeant);
        foreach (Circumstance one in finding.Circumstances.Where(one => one.Aspect is Aspect.Vowel or Aspect.Loudness))
        {
            Target there = one.Aspect == Aspect.Vowel ? target with { Vowel = one.Value } : target with { Loudness = DynamicsData.Words.ToList().IndexOf(one.Value) };
            int worth = one.Aspect == Aspect.Vowel ? PlanPoints.OnItsVowel : PlanPoints.AtItsLoudness;
            yield return Focused(
                new(WishKind.Circumstance, [worth], NextPlanTexts.WhereItFails(one), step => approach.ComesFromBothSides(step, there)) { Target = one.Aspect == Aspect.Vowel ? there : null }, IsMeant);
        }
    }

    /// <summary>What is answered with less: gently and away from where it was heard; better still half-closed, softly, from above.</summary>
    private IEnumerable<Wish> Less(Sparing[] spared, Wish main)
    {
        bool IsAnswered(WarmupStep step) => Array.TrueForAll(spared, one => one.IsAnsweredBy(step));
        Wish Better(int points, string words, Func<WarmupStep, bool> isSo) => new(WishKind.Circumstance, [points], $"{main.Title}: {words}", step => isSo(step) && IsAnswered(step)) { IsTold = false };
        yield return main with { IsServedBy = IsAnswered, How = step => NextPlanTexts.Sparingly(spared[0], step, input.Choir.Notes), Unmet = NextPlanTexts.NothingSpares(main.Title) };
        yield return Better(PlanPoints.OnHalfClosed, NextPlanTexts.Relief, step => Gentle.IsHalfClosed(step.Exercise));
        yield return Better(PlanPoints.Softly, NextPlanTexts.Soft, step => Gentle.IsSoft(step.Exercise));
        yield return Better(PlanPoints.FromAbove, NextPlanTexts.FromAbove, Gentle.ComesFromAbove);
    }

    private static Wish Waiting(WishKind kind, string title, Sparing keeping) => new(kind, [0], "", _ => false) { Unmet = NextPlanTexts.Waits(title, keeping) };

    /// <summary>A need that came from a mark of effort.</summary>
    private IEnumerable<Wish> OfSpared(ChoirNeed need)
    {
        string words = need.WordsIn(input.Choir.Notes);
        int soon = Need.IsSoon(need, input.Date) ? PlanPoints.AskedSoon : 0;
        return sparings.Of(need) is not { Length: > 0 } spared ? [] : Less(
            spared,
            new(WishKind.Asked, [PlanPoints.Asked + soon, PlanPoints.AskedAgain], NextPlanTexts.ToSpare(words), _ => false) { Answer = words, Title = words })
            .Select(wish => Focused(wish, focus => spared.Any(one => focus.Parts.Contains(one.Part.Id))));
    }

    private IEnumerable<Wish> OfNeed(Need need)
    {
        Sparing[] spared = sparings.Of(need);
        if (spared.Length > 0)
        {
            foreach (Wish less in Less(spared, new(WishKind.Heard, HeardPoints(need), NextPlanTexts.Heard(need), _ => false) { Answer = need.Words, Title = need.Words }))
            {
                yield return Focused(less, focus => focus.Parts.Contains(need.Part));
            }

            yield break;
        }

        if (!need.IsAsked && sparings.KeepingFrom(need.Part, need.Pitch) is { } keeping)
        {
            yield return Waiting(WishKind.Heard, need.Words, keeping);
            yield break;
        }

        if (need.Tonic is null && need.Pitch is null)
        {
            yield return new(WishKind.Heard, [0], "", _ => false) { Unmet = NextPlanTexts.NoKeyFor(need) };
            yield break;
        }

        bool IsMeant(PlanFocus focus) => focus.Parts.Contains(need.Part);
        Target target = new(need.Part, need.Pitch, need.Tonic);
        int soon = need.IsDueSoon ? PlanPoints.AskedSoon : 0;
        IReadOnlyList<int> points = need.IsAsked
            ? [PlanPoints.Asked + soon, PlanPoints.AskedAgain]
            : HeardPoints(need);
        yield return Focused(
            new(need.IsAsked ? WishKind.Asked : WishKind.Heard, points, NextPlanTexts.Answers([need]), step => approach.ComesFromBothSides(step, target))
            {
                Answer = need.Words,
                Title = need.Words,
                Heard = need.IsAsked ? null : need,
                Unmet = NextPlanTexts.NoStepFor(need),
                Target = target,
            },
            IsMeant);
    }

    private static int[] HeardPoints(Need need) =>
        [PlanPoints.Heard + (PlanPoints.HeardPerKey * Math.Min(PlanPoints.MostHeardKeys, need.Rungs)), PlanPoints.HeardAgain];

    /// <summary>A region, a purpose, or a pitch that none of its parts has; pitches of theirs are needs with a ladder.</summary>
    private IEnumerable<Wish> OfAsked(ChoirNeed need)
    {
        Part[] parts = [.. need.PartsOf(input.Choir.Parts)];
        bool isSpared = need.Purpose is null && MarkKindData.IsEffort(input.Choir, need.Kind);
        Func<WarmupStep, bool>? isServed = need switch
        {
            _ when parts.Length == 0 => _ => false,
            _ when isSpared => null,
            { Purpose: { } purpose } => step => step.Exercise.Purposes.Contains(purpose),
            { Region: { } region } => step => SingsThrough(step, parts, region),
            { Pitch: { } pitch } when !parts.Any(part => part.Range.Extreme.Contains(pitch.Midi)) => _ => false,
            _ => null,
        };
        int soon = Need.IsSoon(need, input.Date) ? PlanPoints.AskedSoon : 0;
        string words = need.WordsIn(input.Choir.Notes);
        return isServed is null ? [] : [Focused(
            new(WishKind.Asked, [PlanPoints.Asked + soon, PlanPoints.AskedAgain], NextPlanTexts.Serves(words), isServed) { Answer = words, Title = words, Unmet = NextPlanTexts.NotServed(words) },
            focus => (need.Purpose is { } purpose && focus.Purposes.Contains(purpose)) || parts.Any(part => focus.Parts.Contains(part.Id)))];
    }

    private static bool SingsThrough(WarmupStep step, Part[] parts, PitchRange region) => Array.TrueForAll(parts, part =>
    {
        PitchRange[] spans = PartSpans.Of(step, part.Id);
        return spans.Length > 0 && spans.Min(span => span.Low.Midi) <= region.Low.Midi && spans.Max(span => span.High.Midi) >= region.High.Midi;
    });

    private Wish OfPurpose(Purpose purpose)
    {
        int weeks = Math.Min(history.WeeksSince(purpose) ?? PlanPoints.MostPurposeWeeks, PlanPoints.MostPurposeWeeks);
        return Focused(
            new(
                WishKind.Purpose,
                [PlanPoints.Purpose + (PlanPoints.PurposePerWeek * weeks), PlanPoints.PurposeAgain],
                NextPlanTexts.Trains(purpose, history.LastDayOf(purpose), input.Date, history.IsThere),
                step => step.Exercise.Purposes.Contains(purpose)),
            focus => focus.Purposes.Contains(purpose));
    }

    /// <summary>What is never sung is not warm.</summary>
    private IEnumerable<Wish> OfRange(Part part)
    {
        PitchRange comfortable = part.Range.Comfortable;
        int quarter = comfortable.Semitones / 4;
        if (!sparings.IsKeptFromEnd(part, isTop: false))
        {
            yield return new(WishKind.Range, [PlanPoints.RangeEnd], NextPlanTexts.RangeEnd(part, false), step => Array.Exists(PartSpans.Of(step, part.Id), span => span.Low.Midi <= comfortable.Low.Midi + quarter));
        }

        if (!sparings.IsKeptFromEnd(part, isTop: true))
        {
            yield return new(WishKind.Range, [PlanPoints.RangeEnd], NextPlanTexts.RangeEnd(part, true), step => Array.Exists(PartSpans.Of(step, part.Id), span => span.High.Midi >= comfortable.High.Midi - quarter));
        }
    }

    private Wish Focused(Wish wish, Func<PlanFocus, bool> isMeant) => input.Focus is { } focus && isMeant(focus) ? wish.Times(PlanPoints.FocusTimes) : wish;

    private static int Percent(double share) => (int)Math.Round(share * 100, MidpointRounding.AwayFromZero);
}
