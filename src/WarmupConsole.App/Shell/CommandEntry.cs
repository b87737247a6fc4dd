using System.CommandLine;

namespace WarmupConsole.App.Shell;

/// <summary>One command of the tree, as pages and completions name it.</summary>
/// <param name="Path">Its words, the program's name first.</param>
/// <param name="About">What it does.</param>
/// <param name="Options">Its own options, in order.</param>
/// <param name="Arguments">What is named behind it.</param>
/// <param name="Children">The commands below it.</param>
internal sealed record CommandEntry(string Path, string About, IReadOnlyList<OptionEntry> Options, IReadOnlyList<Argument> Arguments, IReadOnlyList<CommandEntry> Children)
{
    /// <summary>The whole tree without what is hidden. Every command takes --help.</summary>
    internal static CommandEntry Of(Command command, string path) => new(
        path,
        command.Description ?? "",
        [.. command.Options.Where(option => !option.Hidden).Select(OptionEntry.Of).Append(OptionEntry.Help).DistinctBy(option => option.Name)],
        [.. command.Arguments.Where(argument => !argument.Hidden)],
        [.. command.Subcommands.Where(child => !child.Hidden).Select(child => Of(child, $"{path} {child.Name}"))]);

    /// <summary>The last word of the path.</summary>
    internal string Name => Path[(Path.LastIndexOf(' ') + 1)..];

    /// <summary>True when a file or a folder may be named behind it.</summary>
    internal bool TakesFiles => Arguments.Any(argument => argument.Name is "plan" or "folder" or "log" or "score" or "file");

    /// <summary>This one and all below it, parents first.</summary>
    internal IEnumerable<CommandEntry> All => Children.SelectMany(child => child.All).Prepend(this);
}
