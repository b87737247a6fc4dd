using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary>Everything that is wrong with what was read, each at its place.</summary>
internal static class Problems
{
    internal static int Print(IEnumerable<FileProblem> problems, TextWriter errors)
    {
        foreach (FileProblem problem in problems)
        {
            errors.WriteLine(problem);
        }

        return ExitCodes.BadInput;
    }
}
