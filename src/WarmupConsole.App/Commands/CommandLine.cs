using System.CommandLine;

namespace WarmupConsole.App.Commands;

/// <summary>The commands, and the exit code for whatever happens in them.</summary>
internal static class CommandLine
{
    /// <summary>In the order in which help shows them.</summary>
    private static readonly OrderedDictionary<string, Func<Composition, Command>> Commands = new()
    {
        ["run"] = RunCommand.Create,
        ["ports"] = PortsCommand.Create,
        ["review"] = ReviewCommand.Create,
        ["plan"] = PlanCommand.Create,
        ["season"] = SeasonCommand.Create,
        ["check"] = CheckCommand.Create,
        ["keys"] = KeysCommand.Create,
        ["export"] = ExportCommand.Create,
        ["new"] = NewCommand.Create,
        ["ranges"] = RangesCommand.Create,
        ["need"] = NeedCommand.Create,
        ["exercises"] = ExercisesCommand.Create,
        ["score"] = ScoreCommand.Create,
        [PlayerCommand.Name] = _ => PlayerCommand.Create(),
        [EarCommand.Name] = _ => EarCommand.Create(),
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
        if (asked is not null && Commands.TryGetValue(asked, out Func<Composition, Command>? one))
        {
            root.Add(one(composition));
            return root;
        }

        foreach (Func<Composition, Command> create in Commands.Values)
        {
            root.Add(create(composition));
        }

        root.Add(ShellCommand.Create(root));
        return root;
    }
}
