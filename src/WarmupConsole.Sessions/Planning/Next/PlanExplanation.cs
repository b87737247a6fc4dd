using WarmupConsole.Sessions.Planning.Choosing;
using WarmupConsole.Sessions.Planning.Seasons;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What each step of a plan is worth, and the best alternative that lost; of a plan made by hand as of a proposed one.</summary>
/// <param name="Steps">In the order of the plan.</param>
/// <param name="Value">Of the whole plan.</param>
/// <param name="Best">Of the best plan that would be proposed now.</param>
/// <param name="Season">Where its day lies.</param>
public sealed record PlanExplanation(IReadOnlyList<ExplainedStep> Steps, long Value, long Best, SeasonTarget Season)
{
    /// <summary>Explains a plan.</summary>
    /// <param name="input">What was known before its day.</param>
    /// <param name="plan">The plan; steps whose exercise is not there any more are passed over.</param>
    public static PlanExplanation Of(NextPlanInput input, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(plan);
        OfferBook book = new(input with { Minutes = plan.Minutes });
        Offer[] steps = [.. plan.Steps.Where(step => input.Exercises.ContainsKey(step.ExerciseId)).Select(step => book.Of(step with { Because = [], Answers = [], Value = null }))];
        Offer[] all = [.. book.All()];
        OfferTable table = new(input with { Minutes = plan.Minutes }, book, [.. steps, .. all]);
        int[] places = [.. steps.Select(step => table.Offers.Index().First(offer => ReferenceEquals(offer.Item, step)).Index)];
        Standing standing = new(table.Problem);
        foreach (int place in places)
        {
            standing.Add(place);
        }

        StepWorths worths = new(book.Wishes, steps);
        Alternatives alternatives = new(table, standing, places);
        ExplainedStep[] explained = [.. steps.Zip(places, (step, place) => alternatives.Explain(step, place, worths))];
        return new(explained, standing.Value, new OfferTable(input with { Minutes = plan.Minutes }, book, all).Best().Value, book.Season);
    }

    private sealed class Alternatives(OfferTable table, Standing standing, int[] places)
    {
        internal ExplainedStep Explain(Offer step, int place, StepWorths worths)
        {
            (long value, bool isWhole) = (standing.Value, standing.IsWhole);
            standing.Remove(place);
            long worth = value - standing.Value;
            int other = BestInstead(step, place, isWhole);
            long loss = other < 0 ? 0 : worth - standing.GainOf(other);
            standing.Add(place);
            (int, string)[] parts = [.. worths.PartsOf(step).Select(part => (part.Points, part.Words))];
            return new(step.Ready.Exercise.Title, worth, parts, other < 0 ? "" : Words(table.Offers[other]), loss);
        }

        private string Words(Offer offer) => $"{offer.Ready.Exercise.Title}, {PlanDifference.Work(offer.Ready, table.Notes)}";

        /// <summary>Another exercise, not yet in the plan; the same in other keys would tell little. It keeps the limits and spares the parts where the plan does.</summary>
        private int BestInstead(Offer step, int place, bool keepsLimits)
        {
            HashSet<int> used = [.. places.Select(other => table.Offers[other].Choice.Exercise)];
            (long Gain, int Index) best = (long.MinValue, -1);
            for (int index = 0; index < table.Offers.Count; index++)
            {
                Choice choice = table.Offers[index].Choice;
                if (index != place && choice.Exercise != step.Choice.Exercise && !used.Contains(choice.Exercise)
                    && (step.IsCrossing || !table.Offers[index].IsCrossing)
                    && (!keepsLimits || standing.IsWholeWith(index)) && standing.GainOf(index) is var gain && gain > best.Gain)
                {
                    best = (gain, index);
                }
            }

            return best.Index;
        }
    }
}
