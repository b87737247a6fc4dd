using System.CommandLine;

namespace WarmupConsole.App.Shell;

/// <summary>An option of a command.</summary>
/// <param name="Name">With its dashes.</param>
/// <param name="Value">What it takes, in capitals; empty for a switch.</param>
/// <param name="About">What it does.</param>
internal sealed record OptionEntry(string Name, string Value, string About)
{
    internal static OptionEntry Help { get; } = new("--help", "", AppTexts.HelpAbout);

    /// <summary>True when it takes a folder.</summary>
    internal bool TakesFolder => Value == "FOLDER";

    /// <summary>True when it takes a file.</summary>
    internal bool TakesFile => Value == "FILE";

    internal static OptionEntry Of(Option option) =>
        option.Name == Help.Name ? Help : new(option.Name, option.ValueType == typeof(bool) || option.Arity.MaximumNumberOfValues == 0 ? "" : option.HelpName ?? option.Name.TrimStart('-').ToUpperInvariant(), option.Description ?? "");
}
