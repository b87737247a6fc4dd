using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup plan next</c>: the plan that answers the last weeks.</summary>
internal static class PlanCommand
{
    private const int DaysInWeek = 7;

    internal static Command Create(Composition composition)
    {
        Command next = new("next", AppTexts.NextAbout);
        PlannerOptions options = new PlannerOptions().AddTo(next, true);
        next.SetAction(parsed => Next(composition, options, parsed));
        Command group = new("plan", AppTexts.PlanGroupAbout);
        group.Add(next);
        group.Add(PlanExplainCommand.Create(composition));
        group.Add(PlanEditCommand.Create(composition));
        return group;
    }

    private static int Next(Composition composition, PlannerOptions options, ParseResult parsed)
    {
        InvocationConfiguration surroundings = parsed.InvocationConfiguration;
        FileRead<ChoirFolder> folder = Content.Open(composition, null, parsed.GetValue(options.Choir));
        FileRead<PlannerSources> sources = folder.IsGood ? PlannerSources.Load(folder.Value) : new(null, folder.Problems);
        if (!sources.IsGood)
        {
            return Problems.Print(sources.Problems, surroundings.Error);
        }

        Plan? last = sources.Value.PlanToCarryOn();
        DateOnly date = parsed.GetValue(options.Date) ?? NextWeek(last?.Date, composition.Today);
        if (WhyNot(sources.Value, last, date) is { } problem)
        {
            return Problems.Print([problem], surroundings.Error);
        }

        FileRead<NextPlanInput> input = options.Said(parsed, sources.Value.Before(date, last));
        IEnumerable<string> notes = date < composition.Today ? [AppTexts.PastDay(date), .. sources.Value.LeftOut] : sources.Value.LeftOut;
        return input.IsGood ? Propose(input.Value, folder.Value!, [.. notes], parsed.GetValue(options.Json) ? ToJson : ToText, surroundings) : Problems.Print(input.Problems, surroundings.Error);
    }

    /// <summary>Why no plan can be proposed, else null.</summary>
    private static FileProblem? WhyNot(PlannerSources sources, Plan? last, DateOnly date) => sources.Last switch
    {
        { IsRunning: true } running => FileProblem.Whole(running.Path, AppTexts.StillRunning),
        _ when date <= last?.Date => FileProblem.Whole("--date", AppTexts.TooEarly(date, last!.Date!.Value)),
        _ => null,
    };

    /// <summary>A week after the last plan, or as many weeks as it takes to come to today.</summary>
    private static DateOnly NextWeek(DateOnly? last, DateOnly today)
    {
        DateOnly next = last?.AddDays(DaysInWeek) ?? today;
        int late = Math.Max(0, today.DayNumber - next.DayNumber);
        return next.AddDays((late + DaysInWeek - 1) / DaysInWeek * DaysInWeek);
    }

    private static int Propose(NextPlanInput input, ChoirFolder folder, IReadOnlyList<string> notes, Func<NextPlanInput, NextPlanResult, string, string> write, InvocationConfiguration surroundings)
    {
        string path = folder.PlanPathFor(input.Date);
        if (File.Exists(path))
        {
            return Problems.Print([FileProblem.Whole(path, AppTexts.PlanThere(input.Last?.Date))], surroundings.Error);
        }

        NextPlanResult next = NextPlan.From(input);
        if (next.Plan.Steps.Count == 0)
        {
            return Problems.Print([.. next.Unmet.Select(sentence => FileProblem.Whole(folder.Root, sentence))], surroundings.Error);
        }

        if (ChoirFolder.WritePlan(path, next.Plan) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(path, reason)], surroundings.Error);
        }

        surroundings.Output.Write(write(input, next with { Unmet = [.. next.Unmet, .. notes] }, path));
        return ExitCodes.Ok;
    }

    private static string ToJson(NextPlanInput input, NextPlanResult next, string path) => NextPlanReport.From(input, next, path).ToJson() + "\n";

    private static string ToText(NextPlanInput input, NextPlanResult next, string path)
    {
        string[] lines =
        [
            AppTexts.Proposal(input.Date, input.Last?.Date, next.Season),
            .. next.Differences.Select(Printable.Line),
            .. next.Unmet.Count == 0 ? [] : next.Unmet.Select(Printable.Line).Prepend(AppTexts.Unmet),
            AppTexts.PlanWritten(path),
        ];
        return string.Join('\n', lines) + "\n";
    }
}
