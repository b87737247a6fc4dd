using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup plan next</c>: the plan that answers the last session.</summary>
internal static class PlanCommand
{
    private const string DateFormat = "yyyy-MM-dd";
    private const int DaysBetween = 7;

    internal static Command Create(Composition composition)
    {
        Option<string?> choir = Options.Choir();
        Option<DateOnly?> date = new("--date") { Description = AppTexts.DateAbout, HelpName = "DATE", CustomParser = ReadDate };
        Command next = new("next", AppTexts.NextAbout);
        next.Add(choir);
        next.Add(date);
        next.SetAction(parsed => Next(composition, parsed.GetValue(choir), parsed.GetValue(date), parsed.InvocationConfiguration));
        Command group = new("plan", AppTexts.PlanGroupAbout);
        group.Add(next);
        return group;
    }

    private static DateOnly? ReadDate(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (DateOnly.TryParseExact(text, DateFormat, CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly date))
        {
            return date;
        }

        result.AddError(AppTexts.BadDate(text));
        return null;
    }

    private static int Next(Composition composition, string? choir, DateOnly? date, InvocationConfiguration surroundings)
    {
        FileRead<Content> read = Content.Load(composition, null, choir);
        if (!read.IsGood)
        {
            return Problems.Print(read.Problems, surroundings.Error);
        }

        ChoirFolder folder = read.Value.Folder;
        FileRead<LastSession> last = folder.SessionPaths.Count == 0 ? new(null, []) : LastSession.Newest(folder);
        if (last.Problems.Count > 0)
        {
            return Problems.Print(last.Problems, surroundings.Error);
        }

        FileRead<NeedsBook> needs = NeedsBook.Open(folder);
        if (!needs.IsGood)
        {
            return Problems.Print(needs.Problems, surroundings.Error);
        }

        NextPlanInput input = Input(composition, read.Value, last.Value, date) with { Needs = needs.Value.Needs };
        return Write(NextPlan.From(input), folder.PlanPathFor(input.Date), surroundings);
    }

    private static NextPlanInput Input(Composition composition, Content content, LastSession? last, DateOnly? date)
    {
        Plan plan = last?.Content.Plan ?? content.Plan.Plan;
        DateOnly today = DateOnly.FromDateTime(composition.Wall.GetLocalNow().DateTime);
        return new()
        {
            Choir = content.Folder.Choir,
            Last = plan,
            Exercises = content.Folder.Exercises.ToDictionary(exercise => exercise.Id),
            Review = last?.Review,
            Date = date ?? (plan.Date ?? today).AddDays(DaysBetween),
        };
    }

    private static int Write(NextPlanResult next, string path, InvocationConfiguration surroundings)
    {
        foreach (string line in (IEnumerable<string>)[.. next.Differences, .. next.Unmet])
        {
            surroundings.Output.WriteLine(line);
        }

        if (ChoirFolder.WritePlan(path, next.Plan) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(path, reason)], surroundings.Error);
        }

        surroundings.Output.WriteLine(AppTexts.PlanWritten(path));
        return ExitCodes.Ok;
    }
}
