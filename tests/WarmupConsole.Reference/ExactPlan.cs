using Google.OrTools.Sat;
using WarmupConsole.Sessions.Planning.Choosing;

namespace WarmupConsole.Reference;

/// <summary>The same problem for an exact solver: one yes-or-no for each choice, one for each time that an aim is served.</summary>
internal sealed class ExactPlan
{
    private readonly CpModel _model = new();
    private readonly PlanProblem _problem;
    private readonly BoolVar[] _isChosen;

    private ExactPlan(PlanProblem problem)
    {
        _problem = problem;
        _isChosen = [.. problem.Choices.Select((_, index) => _model.NewBoolVar($"c{index}"))];
        LimitExercises();
        LimitTime();
        LimitBands();
        KeepPeaksLate();
        KeepOpenVowelsLater();
        _model.Maximize(LinearExpr.WeightedSum(_isChosen, problem.Choices.Select(choice => (long)choice.Own)) + LinearExpr.Sum(problem.Aims.Select(Points)));
    }

    /// <summary>The best value and an upper bound of it; equal when the optimum was proved within the seconds given.</summary>
    internal static (long Value, long Bound) Solve(PlanProblem problem, int seconds, IReadOnlyList<int> hint)
    {
        ExactPlan exact = new(problem);
        HashSet<int> hinted = [.. hint];
        foreach ((int index, BoolVar chosen) in exact._isChosen.Index())
        {
            exact._model.AddHint(chosen, hinted.Contains(index));
        }

        CpSolver solver = new() { StringParameters = $"num_workers:1,random_seed:1,linearization_level:2,max_time_in_seconds:{seconds}" };
        CpSolverStatus status = solver.Solve(exact._model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? ((long)Math.Round(solver.ObjectiveValue), (long)Math.Floor(solver.BestObjectiveBound + 1e-6))
            : throw new InvalidOperationException($"The solver found no plan: {status}.");
    }

    private LinearExpr Sum(Func<Choice, bool> isMeant) => LinearExpr.Sum(_isChosen.Where((_, index) => isMeant(_problem.Choices[index])));

    private LinearExpr Time(Func<Choice, bool> isMeant) =>
        LinearExpr.WeightedSum(_isChosen, _problem.Choices.Select(choice => isMeant(choice) ? (long)choice.Milliseconds : 0));

    private void LimitExercises()
    {
        foreach (IGrouping<int, BoolVar> exercise in _isChosen.Index().GroupBy(chosen => _problem.Choices[chosen.Index].Exercise, chosen => chosen.Item))
        {
            _model.AddAtMostOne(exercise);
        }

        _model.Add(Sum(_ => true) <= _problem.MostSteps);
        _model.Add(Sum(choice => choice.IsNew) <= _problem.MostNew);
    }

    private void LimitTime() => _model.AddLinearConstraint(Time(_ => true), _problem.Shortest, _problem.Longest);

    private void LimitBands()
    {
        foreach ((int band, (int least, int most)) in _problem.Bands.Index())
        {
            _model.AddLinearConstraint(Sum(choice => (int)choice.Band == band), least, most);
        }
    }

    private void KeepPeaksLate()
    {
        BoolVar hasPeak = _model.NewBoolVar("peak");
        foreach ((int index, _) in _problem.Choices.Index().Where(choice => choice.Item.IsPeak))
        {
            _model.AddImplication(_isChosen[index], hasPeak);
        }

        _model.Add(3 * Time(choice => choice.IsPeak || choice.Band == Band.Settling) <= Time(_ => true)).OnlyEnforceIf(hasPeak);
    }

    private void KeepOpenVowelsLater()
    {
        List<BoolVar> closed = [];
        foreach ((int index, Choice choice) in _problem.Choices.Index())
        {
            if (choice.FirstVowel == FirstVowel.Closed)
            {
                closed.Add(_isChosen[index]);
            }
            else if (choice.FirstVowel == FirstVowel.Open)
            {
                _model.AddBoolOr([.. closed, _isChosen[index].Not()]);
            }
        }
    }

    /// <summary>Points of an aim: those of the first time, the second and so on, as far as it is served.</summary>
    private LinearExpr Points(IReadOnlyList<int> points, int aim)
    {
        BoolVar[] times = [.. points.Select((_, time) => _model.NewBoolVar($"a{aim}.{time}"))];
        _model.Add(LinearExpr.Sum(times) <= Sum(choice => choice.Aims.Contains(aim)));
        return LinearExpr.WeightedSum(times, points.Select(one => (long)one));
    }
}
