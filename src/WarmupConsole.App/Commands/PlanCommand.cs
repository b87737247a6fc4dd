using System.CommandLine;
using System.CommandLine.Parsing;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup plan next</c>: the plan that answers the last session.</summary>
internal static class PlanCommand
{
    private const int DaysInWeek = 7;

    internal static Command Create(Composition composition)
    {
        Option<string?> choir = Options.Choir();
        Option<DateOnly?> date = new("--date") { Description = AppTexts.DateAbout, HelpName = "DATE", CustomParser = ReadDate };
        Option<bool> json = Options.Json();
        Command next = new("next", AppTexts.NextAbout);
        next.Add(choir);
        next.Add(date);
        next.Add(json);
        next.SetAction(parsed => Next(composition, (parsed.GetValue(choir), parsed.GetValue(date)), parsed.GetValue(json), parsed.InvocationConfiguration));
        Command group = new("plan", AppTexts.PlanGroupAbout);
        group.Add(next);
        group.Add(PlanEditCommand.Create(composition));
        return group;
    }

    private static DateOnly? ReadDate(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (DayText.TryRead(text, out DateOnly date))
        {
            return date;
        }

        result.AddError(AppTexts.BadDate(text));
        return null;
    }

    private static int Next(Composition composition, (string? Choir, DateOnly? Date) asked, bool asJson, InvocationConfiguration surroundings)
    {
        FileRead<Content> read = Content.Load(composition, null, asked.Choir);
        if (!read.IsGood)
        {
            return Problems.Print(read.Problems, surroundings.Error);
        }

        ChoirFolder folder = read.Value.Folder;
        FileRead<LastSession> last = folder.SessionPaths.Count == 0 ? new(null, []) : LastSession.Newest(folder);
        FileRead<NeedsBook> needs = NeedsBook.Open(folder);
        if (last.Problems.Count > 0 || !needs.IsGood)
        {
            return Problems.Print([.. last.Problems, .. needs.Problems], surroundings.Error);
        }

        FileRead<NextPlanInput> input = Input(composition, read.Value, last.Value, asked.Date);
        return input.IsGood
            ? Propose(input.Value with { Needs = needs.Value.Needs }, folder, asJson, surroundings)
            : Problems.Print(input.Problems, surroundings.Error);
    }

    private static FileRead<NextPlanInput> Input(Composition composition, Content content, LastSession? last, DateOnly? date)
    {
        ChoirFolder folder = content.Folder;
        Dictionary<string, Exercise> exercises = folder.Exercises.ToDictionary(exercise => exercise.Id);
        Plan? plan = PlanToCarryOn(content, last);
        if (WhyNot(plan, last, exercises) is { } reason)
        {
            return new(null, [FileProblem.Whole(last?.Path ?? folder.Root, reason)]);
        }

        if (date <= plan!.Date)
        {
            return new(null, [FileProblem.Whole("--date", AppTexts.TooEarly(date!.Value, plan.Date!.Value))]);
        }

        return new(
            new()
            {
                Choir = folder.Choir,
                Last = plan,
                Earlier = EarlierPlans.Before(folder, new(plan, "", "")).Plans,
                Exercises = exercises,
                Review = last?.Review,
                Date = date ?? NextWeek(plan.Date, composition.Today),
            },
            []);
    }

    /// <summary>The plan that was led last, else the newest one; a bare rehearsal and an open run have no steps to carry on.</summary>
    private static Plan? PlanToCarryOn(Content content, LastSession? last)
    {
        IEnumerable<Plan?> plans = [last?.Content.Plan, content.Plan.Plan, .. EarlierPlans.Before(content.Folder, content.Plan).Plans.Reverse()];
        return plans.FirstOrDefault(plan => plan is { Steps.Count: > 0 });
    }

    /// <summary>A sentence where no plan can be proposed, else null.</summary>
    private static string? WhyNot(Plan? plan, LastSession? last, Dictionary<string, Exercise> exercises) => plan switch
    {
        _ when last is { IsRunning: true } => AppTexts.StillRunning,
        null => AppTexts.NothingToCarryOn,
        _ => plan.Steps.FirstOrDefault(step => !exercises.ContainsKey(step.ExerciseId)) is { } lost ? AppTexts.LostExercise(lost.ExerciseId) : null,
    };

    /// <summary>A week after the last plan, or as many weeks as it takes to come to today.</summary>
    private static DateOnly NextWeek(DateOnly? last, DateOnly today)
    {
        DateOnly next = (last ?? today).AddDays(DaysInWeek);
        int late = Math.Max(0, today.DayNumber - next.DayNumber);
        return next.AddDays((late + DaysInWeek - 1) / DaysInWeek * DaysInWeek);
    }

    private static int Propose(NextPlanInput input, ChoirFolder folder, bool asJson, InvocationConfiguration surroundings)
    {
        string path = folder.PlanPathFor(input.Date);
        if (File.Exists(path))
        {
            return Problems.Print([FileProblem.Whole(path, AppTexts.PlanThere(input.Last.Date))], surroundings.Error);
        }

        NextPlanResult next = NextPlan.From(input);
        if (ChoirFolder.WritePlan(path, next.Plan) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(path, reason)], surroundings.Error);
        }

        if (asJson)
        {
            surroundings.Output.WriteLine(NextPlanReport.From(input, next, path).ToJson());
            return ExitCodes.Ok;
        }

        surroundings.Output.WriteLine(AppTexts.Proposal(input.Date, input.Last.Date));
        Print(next.Differences, surroundings.Output);
        Print(next.Unmet.Count == 0 ? [] : [AppTexts.Unmet, .. next.Unmet], surroundings.Output);
        surroundings.Output.WriteLine(AppTexts.PlanWritten(path));
        return ExitCodes.Ok;
    }

    private static void Print(IEnumerable<string> lines, TextWriter output)
    {
        foreach (string line in lines)
        {
            output.WriteLine(line);
        }
    }
}
