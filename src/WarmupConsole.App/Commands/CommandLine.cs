using System.CommandLine;

namespace WarmupConsole.App.Commands;

/// <summary>The commands, and the exit code for whatever happens in them.</summary>
internal static class CommandLine
{
    internal static int Run(string[] arguments, Composition composition, TextWriter output, TextWriter errors)
    {
        InvocationConfiguration surroundings = new() { Output = output, Error = errors, EnableDefaultExceptionHandler = false };
        try
        {
            ParseResult parsed = Root(composition).Parse(arguments);
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

    private static RootCommand Root(Composition composition)
    {
        RootCommand root = new(AppTexts.About);
        root.Add(RunCommand.Create(composition));
        root.Add(PortsCommand.Create(composition));
        root.Add(ReviewCommand.Create(composition));
        root.Add(PlanCommand.Create(composition));
        root.Add(SeasonCommand.Create(composition));
        root.Add(CheckCommand.Create(composition));
        root.Add(KeysCommand.Create(composition));
        root.Add(ExportCommand.Create(composition));
        root.Add(NewCommand.Create(composition));
        root.Add(RangesCommand.Create(composition));
        root.Add(NeedCommand.Create(composition));
        root.Add(ExercisesCommand.Create(composition));
        root.Add(ScoreCommand.Create(composition));
        root.Add(ShellCommand.Create(root));
        root.Add(PlayerCommand.Create());
        root.Add(EarCommand.Create());
        return root;
    }
}
