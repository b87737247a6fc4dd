using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Turns what was chosen into a plan that says why.</summary>
internal sealed class PlanWriting(NextPlanInput input, OfferBook book, OfferTable table)
{
    internal NextPlanResult Write(Chosen chosen)
    {
        StepWorths worths = new(book.Wishes, chosen.Steps);
        Plan plan = new()
        {
            Date = input.Date,
            Title = NextPlanTexts.Title(input.MinutesOf, chosen.Steps.SelectMany(worths.AnsweredBy).MaxBy(wish => wish.Points[0])?.Title ?? ""),
            Minutes = input.MinutesOf,
            Rolling = input.Last?.Rolling ?? true,
            Piano = input.Last?.Piano ?? PianoWish.None,
            Steps = [.. chosen.Steps.Select(offer => Step(offer, worths))],
        };
        Warmup ready = new(input.Choir, plan, [.. plan.Steps.Zip(chosen.Steps, (step, offer) => offer.Ready with { Plan = step })]);
        Warmup named = ready with { Plan = WithRulesOff(ready) };
        return new(named.Plan, PlanDifference.Lines(input, named), [.. Unmet(chosen, named)], chosen.Value, book.Season);
    }

    private PlanStep Step(Offer offer, StepWorths worths) => offer.Step with
    {
        Answers = [.. worths.AnsweredBy(offer).Select(wish => wish.Answer).Distinct()],
        Value = worths.ValueOf(offer),
        Because = Reasons(offer, worths),
    };

    private string[] Reasons(Offer offer, StepWorths worths)
    {
        Exercise exercise = offer.Ready.Exercise;
        string[] reasons =
        [
            .. worths.ReasonsOf(offer),
            offer.Step.TalkSeconds is { } talk && !book.History.IsNew(exercise.Id) ? NextPlanTexts.LearntTalk(talk) : "",
            offer.Step.Tempo is { } tempo ? NextPlanTexts.Quicker(tempo.ToString(), exercise.Tempo.Default.ToString()) : "",
        ];
        // What was left out was planned and not sung: "as on" that day would deny it.
        string habit = reasons.Contains(NextPlanTexts.Owed(input.LastDay)) ? NextPlanTexts.Kept(input.LastDay) : "";
        string[] told = [.. reasons.Where(reason => reason.Length > 0 && reason != habit)];
        return told.Length > 0 ? told : [NextPlanTexts.Order(exercise.Stage)];
    }

    /// <summary>A rule stays off only where the new plan would break it as well.</summary>
    private Plan WithRulesOff(Warmup ready)
    {
        RuleOff[] off = [.. (input.Last?.Off ?? []).Select(rule => rule with { Because = NextPlanTexts.StillOff(input.LastDay, rule.Because) })];
        HashSet<string> needed = [.. PlanCheck.Check(ready with { Plan = ready.Plan with { Off = off } }, input.Before).Off.Select(remark => remark.Rule)];
        return ready.Plan with { Off = [.. off.Where(rule => needed.Contains(rule.Rule))] };
    }

    private IEnumerable<string> Unmet(Chosen chosen, Warmup ready) =>
    [
        .. book.Wishes.Where((wish, index) => wish.Unmet.Length > 0 && !chosen.Steps.Any(offer => offer.Choice.Aims.Contains(index))).Select(wish => wish.Unmet),
        .. chosen.Steps.SelectMany(offer => book.Sparings.CrossedBy(offer.Ready).Select(crossed => (offer.Ready.Exercise.Title, Crossed: crossed)))
            .GroupBy(step => step.Crossed.Words).Select(steps => NextPlanTexts.CrossesAllTheSame(steps.Select(step => step.Title), steps.First().Crossed)),
        .. book.Sparings.InsistedOn().Select(NextPlanTexts.Insisted),
        .. (input.Last?.Steps ?? []).Select(step => step.ExerciseId).Where(id => !input.Exercises.ContainsKey(id)).Distinct().Select(NextPlanTexts.Vanished),
        .. (input.Review?.Marks ?? []).Select(mark => mark.Part).Where(id => id.Length > 0 && input.Choir.Parts.All(part => part.Id != id)).Distinct().Select(NextPlanTexts.UnknownPart),
        .. Shortfalls(chosen, ready),
        .. book.History.IsThere ? (string[])[] : [NextPlanTexts.NothingKnown],
    ];

    private IEnumerable<string> Shortfalls(Chosen chosen, Warmup ready)
    {
        if (chosen.Steps.Count == 0)
        {
            return [NextPlanTexts.NothingToPlan];
        }

        int total = chosen.Steps.Sum(offer => offer.Choice.Milliseconds);
        int fresh = chosen.Steps.Count(offer => offer.Choice.IsNew);
        return
        [
            .. PlanCheck.Check(ready).Where(remark => remark.Severity == PlanSeverity.Error || remark is { Severity: PlanSeverity.Warning, Step: not null }).Select(remark => NextPlanTexts.NotMended(remark.Sentence)),
            .. total < table.Problem.Shortest || total > table.Problem.Longest ? [NextPlanTexts.OffMinutes(ready.Planned, input.MinutesOf)] : (string[])[],
            .. fresh > table.Problem.MostNew ? [NextPlanTexts.ManyNew(fresh)] : (string[])[],
        ];
    }
}
