using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup exercises</c>: what there is to sing, move and breathe, found by stage, purpose and words.</summary>
internal static class ExercisesCommand
{
    internal static Command Create(Composition composition)
    {
        Command group = new("exercises", AppTexts.ExercisesAbout);
        group.Add(ListCommand(composition, "list", AppTexts.ExercisesListAbout, null));
        group.Add(ListCommand(composition, "find", AppTexts.ExercisesFindAbout, new Argument<string[]>("words") { Description = AppTexts.WordsAbout, Arity = ArgumentArity.OneOrMore }));
        group.Add(ShowCommand(composition));
        group.Add(ExercisesAddCommand.Create(composition));
        return group;
    }

    private static Command ListCommand(Composition composition, string name, string about, Argument<string[]>? words)
    {
        Option<string?> stage = Narrowing("stage", AppTexts.StageAbout, StageData.Ids);
        Option<string?> purpose = Narrowing("purpose", AppTexts.PurposeAbout, [.. ExerciseSearch.Families, .. PurposeData.Ids]);
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new(name, about);
        if (words is not null)
        {
            command.Add(words);
        }

        command.Add(stage);
        command.Add(purpose);
        command.Add(choir);
        command.Add(json);

        command.SetAction(parsed => Print(
            Content.Open(composition, null, parsed.GetValue(choir)),
            new((words is null ? null : parsed.GetValue(words)) ?? [], parsed.GetValue(stage), parsed.GetValue(purpose)),
            parsed.GetValue(json),
            parsed.InvocationConfiguration));
        return command;
    }

    private static Command ShowCommand(Composition composition)
    {
        Argument<string> id = new("id") { Description = AppTexts.ExerciseIdAbout };
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("show", AppTexts.ExercisesShowAbout);
        command.Add(id);
        command.Add(choir);
        command.Add(json);

        command.SetAction(parsed => Show(
            Content.Open(composition, null, parsed.GetValue(choir)),
            parsed.GetValue(id)!,
            parsed.GetValue(json),
            parsed.InvocationConfiguration));
        return command;
    }

    private static Option<string?> Narrowing(string name, string about, IReadOnlyList<string> allowed)
    {
        Option<string?> option = new("--" + name) { Description = about, HelpName = name.ToUpperInvariant() };
        option.Validators.Add(result =>
        {
            string value = result.Tokens[0].Value;
            if (!allowed.Contains(value))
            {
                result.AddError(AppTexts.NotOneOf(name, Printable.Line(value), allowed));
            }
        });
        return option;
    }

    private static int Print(FileRead<ChoirFolder> folder, ExerciseSearch search, bool asJson, InvocationConfiguration surroundings)
    {
        if (!folder.IsGood)
        {
            return Problems.Print(folder.Problems, surroundings.Error);
        }

        IReadOnlyList<Exercise> found = search.In(folder.Value.Exercises);
        surroundings.Output.Write(asJson ? ExercisesReport.From(found).ToJson() + "\n" : ExercisesText.List(found));
        return ExitCodes.Ok;
    }

    private static int Show(FileRead<ChoirFolder> folder, string id, bool asJson, InvocationConfiguration surroundings)
    {
        if (!folder.IsGood)
        {
            return Problems.Print(folder.Problems, surroundings.Error);
        }

        if (folder.Value.Exercises.Find(id) is not { } found)
        {
            surroundings.Error.WriteLine(AppTexts.NoSuchExercise(Printable.Line(id), Nearest.To(id, folder.Value.Exercises.Ids)));
            return ExitCodes.BadInput;
        }

        surroundings.Output.Write(asJson ? ExercisesReport.From([found]).ToJson() + "\n" : ExercisesText.One(found));
        return ExitCodes.Ok;
    }
}
