using WarmupConsole.Sessions.Planning.Choosing;

namespace WarmupConsole.Tests.Sessions.Planning.Choosing;

/// <summary>Problems small enough to try every plan.</summary>
internal static class SmallProblems
{
    /// <summary>Of a seeded evening some few choices; many of them cannot be met, which is wanted.</summary>
    internal static PlanProblem Of(int seed)
    {
        SeededNumbers numbers = new(seed);
        PlanProblem whole = SeededProblems.Of(seed, 14);
        HashSet<int> kept = [.. Enumerable.Range(0, 16).Select(_ => numbers.From(0, whole.Choices.Count - 1))];
        int minutes = numbers.From(3, 9);
        return whole with
        {
            Choices = [.. whole.Choices.Where((_, index) => kept.Contains(index))],
            Shortest = (minutes * 60_000) - 45_000,
            Longest = (minutes * 60_000) + 45_000,
            MostSteps = 5,
            Bands = [(0, 1), (0, 2), (0, 2), (0, 1), (1, 4), (0, 1)],
        };
    }

    /// <summary>The best value of all plans that keep every limit, or null when none does; by trying them all.</summary>
    internal static long? Best(PlanProblem problem)
    {
        long? best = null;
        foreach (int[] chosen in Subsets(problem).Where(chosen => Keeps(problem, chosen)))
        {
            best = Math.Max(best ?? long.MinValue, problem.ValueOf(chosen));
        }

        return best;
    }

    /// <summary>Every limit, written anew from what docs/planner.md says.</summary>
    internal static bool Keeps(PlanProblem problem, IReadOnlyList<int> chosen)
    {
        Choice[] steps = [.. chosen.Select(index => problem.Choices[index])];
        int total = steps.Sum(step => step.Milliseconds);
        int fromPeak = steps.SkipWhile(step => !step.IsPeak).Sum(step => step.Milliseconds);
        return steps.Length <= problem.MostSteps
            && total >= problem.Shortest && total <= problem.Longest
            && steps.DistinctBy(step => step.Exercise).Count() == steps.Length
            && steps.Count(step => step.IsNew) <= problem.MostNew
            && problem.Bands.Index().All(band => steps.Count(step => (int)step.Band == band.Index) is var count && count >= band.Item.Least && count <= band.Item.Most)
            && (!steps.Any(step => step.IsPeak) || 3 * fromPeak <= total)
            && steps.FirstOrDefault(step => step.FirstVowel != FirstVowel.None)?.FirstVowel != FirstVowel.Open;
    }

    private static IEnumerable<int[]> Subsets(PlanProblem problem)
    {
        for (int set = 1; set < 1 << problem.Choices.Count; set++)
        {
            if (int.PopCount(set) <= problem.MostSteps)
            {
                yield return [.. Enumerable.Range(0, problem.Choices.Count).Where(choice => (set & (1 << choice)) != 0)];
            }
        }
    }
}
