using System.Diagnostics;
using System.Globalization;
using WarmupConsole.Reference;
using WarmupConsole.Sessions.Planning.Choosing;
using WarmupConsole.Tests.Sessions.Planning.Choosing;

// docs/planner-reference.csv: seed, value of our planner, best value of the exact solver, its upper bound.
int first = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 1;
int last = args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : SeededProblems.Count;
int seconds = args.Length > 2 ? int.Parse(args[2], CultureInfo.InvariantCulture) : 30;
Console.WriteLine("seed,value,optimum,bound");
List<double> shares = [];
TimeSpan ours = TimeSpan.Zero;
for (int seed = first; seed <= last; seed++)
{
    PlanProblem problem = SeededProblems.Of(seed);
    long start = Stopwatch.GetTimestamp();
    ChosenPlan plan = PlanSearch.Best(problem);
    ours += Stopwatch.GetElapsedTime(start);
    (long optimum, long bound) = ExactPlan.Solve(problem, seconds, plan.Choices);
    Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{seed},{plan.Value},{optimum},{bound}"));
    shares.Add(plan.IsWhole ? 100.0 * plan.Value / optimum : 0);
}

shares.Sort();
Console.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"median {shares[shares.Count / 2]:0.00} %, worst {shares[0]:0.00} %; {ours.TotalMilliseconds / shares.Count:0.0} ms each"));
