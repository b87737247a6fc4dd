using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning.Seasons;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What a step is worth by itself: variety against habit, growth, tonight, and a ladder that is one.</summary>
internal sealed class OwnValue(NextPlanInput input, History history, SeasonTarget season)
{
    private static readonly Purpose[] TaxingPurposes = [Purpose.Quick, Purpose.Complex, Purpose.SoftToLoud, Purpose.LeapOctave];

    /// <summary>The points of an exercise, whatever its keys.</summary>
    internal IEnumerable<OwnPoints> Of(Exercise exercise, Difficulty difficulty) =>
        Variety(exercise).Concat(Growth(exercise, difficulty)).Concat(Tonight(exercise)).Where(own => own.Points != 0);

    /// <summary>The points of its keys or rounds.</summary>
    internal IEnumerable<OwnPoints> Of(WarmupStep step, bool isPeak)
    {
        if (!step.Exercise.IsSung)
        {
            yield return new(PlanPoints.Round * Math.Abs(step.Rounds - step.Exercise.Rounds), NextPlanTexts.UnusualRounds(step.Exercise.Rounds));
            yield break;
        }

        int keys = step.Ladder.DifferentKeys;
        yield return new(PlanPoints.Key * Math.Min(PlanPoints.MostKeys, keys), NextPlanTexts.KeysOfLadder);
        yield return new(PlanPoints.LongLadder * Math.Max(0, keys - PlanPoints.LongBeyondKeys), NextPlanTexts.LongLadder);
        if (isPeak)
        {
            yield return new(PlanPoints.Peak + (step.Plan.Keys.ReachPercent / 2), NextPlanTexts.Peak(season), true);
        }
    }

    private IEnumerable<OwnPoints> Variety(Exercise exercise)
    {
        if (IsOwed(exercise))
        {
            yield return new(PlanPoints.Owed, NextPlanTexts.Owed(input.LastDay), true);
        }

        if (history.IsNew(exercise.Id))
        {
            yield return new(PlanPoints.New, NextPlanTexts.NewToChoir(NewTalk.Seconds(exercise)), true);
        }

        int rested = Math.Clamp((history.WeeksSince(exercise.Id) ?? 0) - PlanPoints.RestedFromWeek + 1, 0, PlanPoints.MostRestedWeeks);
        yield return new(PlanPoints.Rested * rested, rested == 0 ? "" : NextPlanTexts.LastSung(history.LastDayOf(exercise.Id)!.Value), true);
        yield return new(PlanPoints.Worn * Math.Max(0, history.RecentTimes(exercise.Id) - 1), NextPlanTexts.Worn);
    }

    private bool IsOwed(Exercise exercise) =>
        input.Review is { } review && review.Steps.Concat(review.NotBegun).Any(step => !step.HasWork && step.ExerciseId == exercise.Id);

    private IEnumerable<OwnPoints> Growth(Exercise exercise, Difficulty difficulty)
    {
        if (exercise.Stage == Stage.Sung)
        {
            int beyond = Math.Max(0, difficulty.Points - season.Difficulty);
            yield return new((Math.Min(difficulty.Points, season.Difficulty) / PlanPoints.DifficultyHalf) + (PlanPoints.TooDifficult * beyond), NextPlanTexts.Growth(difficulty.Points, season));
        }
    }

    private IEnumerable<OwnPoints> Tonight(Exercise exercise)
    {
        bool isLow = input.Tonight.Energy == Energy.Low || input.Tonight.Parts.Any(part => part.HasColds || part.IsTired);
        if (isLow && (exercise.Stage is Stage.Humming or Stage.LipTrill || exercise.Purposes.Contains(Purpose.Slow)))
        {
            yield return new(PlanPoints.Gentle, NextPlanTexts.GentleTonight, true);
        }

        yield return new(isLow && exercise.Purposes.Any(TaxingPurposes.Contains) ? PlanPoints.Taxing : 0, NextPlanTexts.TaxingTonight);
        bool isThin = input.Tonight.Parts.Any(one => input.Choir.Parts.FirstOrDefault(part => part.Id == one.PartId) is { } part && one.IsThin(part.Singers));
        yield return new(isThin && Together.IsNeededFor(exercise) ? PlanPoints.ThinPart : 0, NextPlanTexts.ThinTonight);
    }
}
