using System.Text;

namespace WarmupConsole.App.Shell;

/// <summary>The manual page, section 1, from the command tree.</summary>
internal static class ManPage
{
    internal static string Write(CommandEntry root, string version)
    {
        StringBuilder page = new($".\\\" Written by `warmup shell man`.\n.TH WARMUP 1 \"\" \"warmup {version}\" \"User commands\"\n.SH NAME\nwarmup \\- {Text(Uncapital(root.About))}\n.SH SYNOPSIS\n");
        foreach (CommandEntry command in root.All.Where(command => command.Children.Count == 0))
        {
            page.Append(".br\n").Append(Bold(command.Path)).Append(Synopsis(command)).Append('\n');
        }

        page.Append(".SH COMMANDS\n");
        foreach (CommandEntry command in root.All.Skip(1))
        {
            Command(page, command);
        }

        return page.Append(AppTexts.ManEnd).ToString();
    }

    private static string Synopsis(CommandEntry command) =>
        string.Concat(command.Arguments.Select(argument => argument.Arity.MinimumNumberOfValues == 0 ? $" [\\fI{Text(argument.Name)}\\fR]" : $" \\fI{Text(argument.Name)}\\fR")) + " [options]";

    private static void Command(StringBuilder page, CommandEntry command)
    {
        page.Append(".SS ").Append(Text(command.Path)).Append('\n').Append(Text(command.About)).Append('\n');
        if (command.Children.Count > 0)
        {
            return;
        }

        foreach ((string name, string about) in command.Arguments.Select(argument => ($"\\fI{Text(argument.Name)}\\fR", argument.Description ?? ""))
            .Concat(command.Options.Select(option => (Bold(option.Name) + (option.Value.Length > 0 ? $" \\fI{Text(option.Value)}\\fR" : ""), option.About))))
        {
            page.Append(".TP\n").Append(name).Append('\n').Append(Text(about)).Append('\n');
        }
    }

    private static string Bold(string text) => $"\\fB{Text(text)}\\fR";

    private static string Uncapital(string text) => text.Length == 0 ? text : char.ToLowerInvariant(text[0]) + text[1..].TrimEnd('.');

    /// <summary>Nothing in it is a request or an escape.</summary>
    private static string Text(string text)
    {
        string escaped = text.Replace("\\", "\\e", StringComparison.Ordinal).Replace("-", "\\-", StringComparison.Ordinal).ReplaceLineEndings(" ");
        return escaped.StartsWith('.') || escaped.StartsWith('\'') ? "\\&" + escaped : escaped;
    }
}
