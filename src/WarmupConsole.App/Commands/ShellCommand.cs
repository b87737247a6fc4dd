using System.CommandLine;
using System.Reflection;
using WarmupConsole.App.Shell;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup shell</c>: the manual page and completions, from the commands as they are.</summary>
internal static class ShellCommand
{
    private const string Program = "warmup";

    internal static Command Create(RootCommand root)
    {
        Command group = new("shell", AppTexts.ShellAbout);
        group.Add(Page("man", AppTexts.ShellManAbout, () => ManPage.Write(Tree(root), Assembly.GetExecutingAssembly().GetName().Version!.ToString(3))));
        group.Add(Page("bash", AppTexts.ShellBashAbout, () => Completions.Bash(Tree(root))));
        group.Add(Page("zsh", AppTexts.ShellZshAbout, () => Completions.Zsh(Tree(root))));
        group.Add(Page("fish", AppTexts.ShellFishAbout, () => Completions.Fish(Tree(root))));
        return group;
    }

    private static CommandEntry Tree(RootCommand root) => CommandEntry.Of(root, Program);

    private static Command Page(string name, string about, Func<string> write)
    {
        Command command = new(name, about);
        command.SetAction(parsed => parsed.InvocationConfiguration.Output.Write(write()));
        return command;
    }
}
