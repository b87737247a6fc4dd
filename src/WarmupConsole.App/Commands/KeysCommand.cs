using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Plans;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup keys</c>: every key of a plan, or of one exercise, as text or JSON.</summary>
internal static class KeysCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string?> plan = Options.Plan();
        Option<string?> choir = Options.Choir();
        Option<string?> exercise = new("--exercise") { Description = AppTexts.ExerciseAbout, HelpName = "ID" };
        Option<bool> json = Options.Json();
        LadderOptions ladder = new();
        Command command = new("keys", AppTexts.KeysAbout);
        command.Add(plan);
        command.Add(choir);
        command.Add(exercise);
        ladder.AddTo(command);
        command.Add(json);
        command.Validators.Add(result =>
        {
            if (result.GetValue(exercise) is not null && result.GetValue(plan) is not null)
            {
                result.AddError(AppTexts.PlanOrExercise);
            }

            if (result.GetValue(exercise) is null && ladder.IsGivenIn(result))
            {
                result.AddError(AppTexts.KeysOfExercise);
            }
        });
        command.SetAction(parsed => parsed.GetValue(exercise) is { } id
            ? One(Content.Open(composition, null, parsed.GetValue(choir)), id, ladder.Given(parsed), parsed.GetValue(json), parsed.InvocationConfiguration)
            : All(composition, parsed.GetValue(plan), parsed.GetValue(choir), parsed.GetValue(json), parsed.InvocationConfiguration));
        return command;
    }

    private static int All(Composition composition, string? plan, string? choir, bool asJson, InvocationConfiguration surroundings)
    {
        FileRead<Content> read = Content.Load(composition, plan, choir);
        return read.IsGood
            ? Print(read.Value.Warmup, KeysText.Write, asJson, surroundings)
            : Problems.Print(read.Problems, surroundings.Error);
    }

    private static int One(FileRead<ChoirFolder> folder, string exercise, IReadOnlyList<(string Name, string Value)> keys, bool asJson, InvocationConfiguration surroundings)
    {
        if (!folder.IsGood)
        {
            return Problems.Print(folder.Problems, surroundings.Error);
        }

        FileRead<Plan> plan = OneStepPlan.Of(exercise, keys, folder.Value.Context);
        return plan.IsGood
            ? Print(WarmupBuilder.Build(folder.Value.Choir, plan.Value, folder.Value.Exercises.In(plan.Value)), KeysText.WriteOne, asJson, surroundings)
            : Problems.Print(plan.Problems, surroundings.Error);
    }

    private static int Print(Warmup warmup, Func<Warmup, string> text, bool asJson, InvocationConfiguration surroundings)
    {
        surroundings.Output.WriteLine(asJson ? KeysReport.From(warmup).ToJson() : text(warmup));
        return ExitCodes.Ok;
    }
}
