using System.CommandLine;
using System.CommandLine.Parsing;

namespace WarmupConsole.App.Commands;

/// <summary>Arguments and options that several commands share.</summary>
internal static class Options
{
    internal static Argument<string?> Plan() => Optional("plan", AppTexts.PlanAbout);

    internal static Argument<string?> Optional(string name, string about)
    {
        Argument<string?> argument = new(name) { Description = about, Arity = ArgumentArity.ZeroOrOne };
        argument.Validators.Add(RefuseOptions);
        return argument;
    }

    internal static Argument<string> Required(string name, string about)
    {
        Argument<string> argument = new(name) { Description = about };
        argument.Validators.Add(RefuseOptions);
        return argument;
    }

    internal static Option<string?> Choir() => new("--choir") { Description = AppTexts.ChoirAbout, HelpName = "FOLDER" };

    internal static Option<bool> Json() => new("--json") { Description = AppTexts.JsonAbout };

    internal static Option<string?> Port() => new("--port") { Description = AppTexts.PortAbout, HelpName = "NAME" };

    // A mistyped option would otherwise be taken for a file name.
    private static void RefuseOptions(ArgumentResult result)
    {
        if (result.Tokens.FirstOrDefault(token => token.Value.StartsWith('-')) is { } word)
        {
            result.AddError(AppTexts.NoSuchOption(word.Value));
        }
    }
}
