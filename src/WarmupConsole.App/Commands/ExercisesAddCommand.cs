using System.CommandLine;
using WarmupConsole.App.Running;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup exercises add</c>: an exercise of one's own, asked for step by step or given by options.</summary>
internal static class ExercisesAddCommand
{
    internal static Command Create(Composition composition)
    {
        Option<string?>[] fields = [.. OneExercise.Fields.Select(Field)];
        Option<bool> yes = new("--yes") { Description = AppTexts.AddYesAbout };
        Option<string?> choir = Options.Choir();
        Option<string?> port = Options.Port();
        Option<bool> json = Options.Json();
        Command command = new("add", AppTexts.ExercisesAddAbout);
        foreach (Option option in (IEnumerable<Option>)[.. fields, yes, choir, port, json])
        {
            command.Add(option);
        }

        command.SetAction(parsed =>
        {
            FileRead<ChoirFolder> folder = Content.Open(composition, null, parsed.GetValue(choir));
            if (!folder.IsGood)
            {
                return Problems.Print(folder.Problems, parsed.InvocationConfiguration.Error);
            }

            ExerciseForm form = new(Given(fields.Select(parsed.GetValue)), folder.Value.Exercises);
            NewExercise adding = new(composition, folder.Value, Ports.Choose(composition, parsed.GetValue(port)), parsed.InvocationConfiguration) { PrintsJson = parsed.GetValue(json) };
            return adding.PrintsJson || parsed.GetValue(yes) || composition.Answers is null ? adding.AtOnce(form) : adding.Asking(form, composition.Answers);
        });
        return command;
    }

    private static Option<string?> Field(string name) =>
        new("--" + ExerciseForm.Option(name)) { Description = AppTexts.AddFieldAbout(name), HelpName = "TEXT" };

    private static Dictionary<string, string> Given(IEnumerable<string?> values) => OneExercise.Fields.Zip(values)
        .Where(field => field.Second is not null)
        .ToDictionary(field => field.First, field => field.Second!);
}
