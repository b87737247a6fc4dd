using WarmupConsole.App.Running;
using WarmupConsole.Storage.SessionLogs;
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

    /// <summary>What of a log was left out; a torn end is no finding.</summary>
    internal static int PrintDamages(LastSession session, TextWriter errors)
    {
        foreach (LogDamage damage in session.Damages)
        {
            errors.WriteLine(AppTexts.LeftOut(session.Path, damage.Offset, damage.Sentence));
        }

        return session.Damages.All(damage => damage.IsNormal) ? ExitCodes.Ok : ExitCodes.Findings;
    }
}
