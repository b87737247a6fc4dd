using System.CommandLine;

namespace WarmupConsole.App.Commands;

/// <summary>The commands, and the exit code for whatever happens in them.</summary>
internal static class CommandLine
{
    /// <summary>In the order in which help shows them.</summary>
    private static readonly OrderedDictionary<string, Func<Composition, RootCommand, Command>> Commands = new()
    {
        ["run"] = (composition, _) => RunCommand.Create(composition),
        ["ports"] = (composition, _) => PortsCommand.Create(composition),
        ["review"] = (composition, _) => ReviewCommand.Create(composition),
        ["plan"] = (composition, _) => PlanCommand.Create(composition),
        ["season"] = (composition, _) => SeasonCommand.Create(composition),
        ["check"] = (composition, _) => CheckCommand.Create(composition),
        ["keys"] = (composition, _) => KeysCommand.Create(composition),
        ["export"] = (composition, _) => ExportCommand.Create(composition),
        ["new"] = (composition, _) => NewCommand.Create(composition),
        ["ranges"] = (composition, _) => RangesCommand.Create(composition),
        ["need"] = (composition, _) => NeedCommand.Create(composition),
        ["exercises"] = (composition, _) => ExercisesCommand.Create(composition),
        ["score"] = (composition, _) => ScoreCommand.Create(composition),
        [ShellCommand.Name] = (_, root) => ShellCommand.Create(root),
        [PlayerCommand.Name] = (_, _) => PlayerCommand.Create(),
        [EarCommand.Name] = (_, _) => EarCommand.Create(),
    };

    internal static int Run(string[] arguments, Composition composition, TextWriter output, TextWriter errors)
    {
        InvocationConfiguration surroundings = new() { Output = output, Error = errors, EnableDefaultExceptionHandler = false };
        try
        {
            ParseResult parsed = Root(composition, arguments.FirstOrDefault()).Parse(arguments);
            int code = parsed.Invoke(surroundings);
            return parsed.Errors.Count > 0 ? ExitCodes.BadInput : code;
        }
#pragma warning disable CA1031 // A failure of the program is a sentence and an exit code, not a stack trace.
        catch (Exception e)
#pragma warning restore CA1031
        {
            errors.WriteLine(AppTexts.Internal(e.Message));
            composition.Settings.AddDiagnostics(composition.Wall.GetLocalNow(), e.ToString());
            return ExitCodes.Internal;
        }
    }

    /// <summary>With all commands; where the first argument names one of them, with that one alone: each takes time to be made, and the console should be there at once.</summary>
    private static RootCommand Root(Composition composition, string? asked)
    {
        RootCommand root = new(AppTexts.About);
        bool isOne = Commands.ContainsKey(asked ?? "");
        foreach ((string name, Func<Composition, RootCommand, Command> create) in Commands)
        {
            if (!isOne || name == asked || asked == ShellCommand.Name)
            {
                root.Add(create(composition, root));
            }
        }

        return root;
    }
}
