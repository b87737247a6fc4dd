using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Planning.Seasons;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup season</c>: the calendar of past and coming warm-ups.</summary>
internal static class SeasonCommand
{
    internal static Command Create(Composition composition)
    {
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("season", AppTexts.SeasonAbout);
        command.Add(choir);
        command.Add(json);
        command.SetAction(parsed => Print(composition, Content.Open(composition, null, parsed.GetValue(choir)), parsed.GetValue(json), parsed.InvocationConfiguration));
        return command;
    }

    private static int Print(Composition composition, FileRead<ChoirFolder> folder, bool asJson, InvocationConfiguration surroundings)
    {
        if (!folder.IsGood)
        {
            return Problems.Print(folder.Problems, surroundings.Error);
        }

        FileRead<LoadedPlan>[] plans = [.. folder.Value.PlanPaths.Select(folder.Value.ReadPlan)];
        FileRead<LastSession>[] sessions = [.. folder.Value.SessionPaths.Select(LastSession.Load)];
        foreach (FileProblem problem in plans.SelectMany(plan => plan.Problems).Concat(sessions.SelectMany(session => session.Problems)))
        {
            surroundings.Error.WriteLine(AppTexts.SeasonWithout(problem.Headline));
        }

        Season season = Season.Of(new(
            folder.Value.Choir.Concerts,
            [.. plans.Where(plan => plan.IsGood).Select(plan => plan.Value!.Plan)],
            [.. sessions.Where(session => session.IsGood).Select(session => Led(session.Value!.Review))],
            composition.Today));
        surroundings.Output.Write(asJson ? CalendarReport.From(season).ToJson() + "\n" : CalendarText.Write(season, composition.Today));
        return ExitCodes.Ok;
    }

    private static (DateOnly Day, int Minutes) Led(SessionReview review) =>
        (DateOnly.FromDateTime(review.Start.DateTime), (int)Math.Round(review.Spent.TotalMinutes, MidpointRounding.AwayFromZero));
}
