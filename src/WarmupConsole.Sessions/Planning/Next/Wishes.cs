using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Findings;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Everything that the next plan should do, each with its points: findings, what was heard and asked, purposes, ranges, habit.</summary>
internal sealed class Wishes(NextPlanInput input, History history, Approach approach)
{
    /// <summary>Kinds that ask for relief: they are worked on with half-closed sounds too, which are easier on the voice.</summary>
    private static readonly string[] Tiring = ["strained", "pressed", "tired"];

    internal IReadOnlyList<Wish> All() =>
    [
        .. input.Findings.Where(IsOfChoir).SelectMany(OfFinding),
        .. Need.AllIn(input).Where(need => !IsFound(need)).SelectMany(OfNeed),
        .. input.Needs.Where(need => need.IsOpenOn(input.Date)).Select(OfAsked).OfType<Wish>(),
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
        bool IsMeant(PlanFocus focus) => focus.Finding == finding.Id || focus.Parts.Contains(finding.Part);
        int trend = finding.Trend.Direction switch { TrendDirection.Better => PlanPoints.WhenBetter, TrendDirection.Worse => PlanPoints.WhenWorse, _ => 100 };
        int points = (PlanPoints.Finding + (PlanPoints.FindingPerPercent * Percent(finding.Rate.Low))) * trend / 100;
        string title = FindingText.Title(finding, input.Choir);
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

        if (Tiring.Contains(finding.Kind))
        {
            yield return Focused(new(WishKind.Circumstance, [PlanPoints.OnHalfClosed], NextPlanTexts.Relief, step => IsRelief(step) && approach.ComesFromBothSides(step, target)), IsMeant);
        }
    }

    private static bool IsRelief(WarmupStep step) => step.Exercise.Stage is Stage.Humming or Stage.LipTrill;

    private IEnumerable<Wish> OfNeed(Need need)
    {
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
            : [PlanPoints.Heard + (PlanPoints.HeardPerKey * Math.Min(PlanPoints.MostHeardKeys, need.Rungs)), PlanPoints.HeardAgain];
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
        if (Tiring.Contains(need.Kind))
        {
            yield return Focused(new(WishKind.Circumstance, [PlanPoints.OnHalfClosed], NextPlanTexts.Relief, step => IsRelief(step) && approach.ComesFromBothSides(step, target)), IsMeant);
        }
    }

    /// <summary>A region, a purpose, or a pitch that none of its parts has; pitches of theirs are needs with a ladder.</summary>
    private Wish? OfAsked(ChoirNeed need)
    {
        Part[] parts = [.. need.PartsOf(input.Choir.Parts)];
        Func<WarmupStep, bool>? isServed = need switch
        {
            _ when parts.Length == 0 => _ => false,
            { Purpose: { } purpose } => step => step.Exercise.Purposes.Contains(purpose),
            { Region: { } region } => step => SingsThrough(step, parts, region),
            { Pitch: { } pitch } when !parts.Any(part => part.Range.Extreme.Contains(pitch.Midi)) => _ => false,
            _ => null,
        };
        int soon = Need.IsSoon(need, input.Date) ? PlanPoints.AskedSoon : 0;
        string words = need.WordsIn(input.Choir.Notes);
        return isServed is null ? null : Focused(
            new(WishKind.Asked, [PlanPoints.Asked + soon, PlanPoints.AskedAgain], NextPlanTexts.Serves(words), isServed) { Answer = words, Title = words, Unmet = NextPlanTexts.NotServed(words) },
            focus => (need.Purpose is { } purpose && focus.Purposes.Contains(purpose)) || parts.Any(part => focus.Parts.Contains(part.Id)));
    }

    private static bool SingsThrough(WarmupStep step, Part[] parts, PitchRange region) => Array.TrueForAll(parts, part =>
    {
        PitchRange[] spans = [.. step.Ladder.Rungs.SelectMany(rung => rung.Parts).Where(sung => sung.Sings && sung.Part.Id == part.Id).Select(sung => sung.Span)];
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
    private static IEnumerable<Wish> OfRange(Part part)
    {
        PitchRange comfortable = part.Range.Comfortable;
        int quarter = comfortable.Semitones / 4;
        yield return new(WishKind.Range, [PlanPoints.RangeEnd], NextPlanTexts.RangeEnd(part, false), step => Sings(step, part, span => span.Low.Midi <= comfortable.Low.Midi + quarter));
        yield return new(WishKind.Range, [PlanPoints.RangeEnd], NextPlanTexts.RangeEnd(part, true), step => Sings(step, part, span => span.High.Midi >= comfortable.High.Midi - quarter));
    }

    private static bool Sings(WarmupStep step, Part part, Func<PitchRange, bool> isThere)
    {
        foreach (Rung rung in step.Ladder.Rungs)
        {
            foreach (RungPart sung in rung.Parts)
            {
                if (sung.Sings && sung.Part.Id == part.Id && isThere(sung.Span))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private Wish Focused(Wish wish, Func<PlanFocus, bool> isMeant) => input.Focus is { } focus && isMeant(focus) ? wish.Times(PlanPoints.FocusTimes) : wish;

    private static int Percent(double share) => (int)Math.Round(share * 100, MidpointRounding.AwayFromZero);
}
