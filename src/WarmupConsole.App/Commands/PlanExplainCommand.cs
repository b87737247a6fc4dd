using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup plan explain</c>: what each step of a plan is worth, and the best alternative that lost.</summary>
internal static class PlanExplainCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string?> plan = Options.Optional("plan", AppTexts.PlanAbout);
        Command command = new("explain", AppTexts.ExplainAbout);
        command.Add(plan);
        PlannerOptions options = new PlannerOptions().AddTo(command, false);
        command.SetAction(parsed => Explain(composition, Content.Load(composition, parsed.GetValue(plan), parsed.GetValue(options.Choir)), options, parsed));
        return command;
    }

    private static int Explain(Composition composition, FileRead<Content> read, PlannerOptions options, ParseResult parsed)
    {
        InvocationConfiguration surroundings = parsed.InvocationConfiguration;
        FileRead<PlannerSources> sources = read.IsGood ? PlannerSources.Load(read.Value.Folder) : new(null, read.Problems);
        if (!sources.IsGood)
        {
            return Problems.Print(sources.Problems, surroundings.Error);
        }

        LoadedPlan plan = read.Value!.Plan;
        if (plan.Plan.Steps.Count == 0)
        {
            return Problems.Print([FileProblem.Whole(plan.Path, AppTexts.NothingToExplain)], surroundings.Error);
        }

        DateOnly date = plan.Plan.Date ?? composition.Today;
        FileRead<NextPlanInput> input = options.Said(parsed, sources.Value.Before(date, sources.Value.Plans.LastOrDefault(other => other.Steps.Count > 0 && other.Date < date)));
        if (!input.IsGood)
        {
            return Problems.Print(input.Problems, surroundings.Error);
        }

        PlanExplanation explanation = PlanExplanation.Of(input.Value, plan.Plan);
        surroundings.Output.Write(parsed.GetValue(options.Json) ? ExplanationReport.From(explanation).ToJson() + "\n" : ExplanationText.Write(plan.Plan, explanation));
        return ExitCodes.Ok;
    }
}
