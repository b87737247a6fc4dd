using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Storage.Decisions;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup review dismiss</c> and <c>warmup review restore</c>: the director knows better than the numbers.</summary>
internal static class DismissCommands
{
    internal static void AddTo(Command review, Composition composition)
    {
        review.Add(Dismiss(composition));
        review.Add(Restore(composition));
    }

    private static Command Dismiss(Composition composition)
    {
        Argument<string> finding = Options.Required("finding", AppTexts.FindingAbout);
        Option<string> why = new("--why") { Description = AppTexts.WhyAbout, HelpName = "REASON", Required = true };
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("dismiss", AppTexts.DismissAbout);
        command.Add(finding);
        command.Add(why);
        command.Add(choir);
        command.Add(json);
        command.SetAction(parsed => With(composition, parsed.GetValue(choir), parsed.InvocationConfiguration, folder =>
        {
            string id = parsed.GetValue(finding)!;
            string[] known = [.. SeasonReview.Of(folder, 0).Findings.Concat(SeasonReview.Of(folder).Findings).Select(found => found.Id).Distinct()];
            return known.Contains(id)
                ? Decide(folder, new(composition.Today, id, true, parsed.GetValue(why)!), parsed.GetValue(json) ? null : AppTexts.Dismissed(id), parsed.InvocationConfiguration)
                : Refuse(AppTexts.NoSuchFinding(id, known), parsed.InvocationConfiguration);
        }));
        return command;
    }

    private static Command Restore(Composition composition)
    {
        Argument<string> finding = Options.Required("finding", AppTexts.FindingAbout);
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("restore", AppTexts.RestoreAbout);
        command.Add(finding);
        command.Add(choir);
        command.Add(json);
        command.SetAction(parsed => With(composition, parsed.GetValue(choir), parsed.InvocationConfiguration, folder =>
        {
            string id = parsed.GetValue(finding)!;
            return DecisionsFile.Dismissed(DecisionsFile.Load(folder).Value ?? []).ContainsKey(id)
                ? Decide(folder, new(composition.Today, id, false, ""), parsed.GetValue(json) ? null : AppTexts.Restored(id), parsed.InvocationConfiguration)
                : Refuse(AppTexts.NotDismissed(id), parsed.InvocationConfiguration);
        }));
        return command;
    }

    /// <param name="folder">The choir.</param>
    /// <param name="decision">What was decided.</param>
    /// <param name="done">The sentence to print, or null to print JSON.</param>
    /// <param name="surroundings">Where to.</param>
    private static int Decide(ChoirFolder folder, Decision decision, string? done, InvocationConfiguration surroundings)
    {
        if (DecisionsFile.Append(folder, decision) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(DecisionsFile.Name, reason)], surroundings.Error);
        }

        surroundings.Output.WriteLine(done ?? DecisionReport.From(decision).ToJson());
        return ExitCodes.Ok;
    }

    private static int Refuse(string sentence, InvocationConfiguration surroundings)
    {
        surroundings.Error.WriteLine(Printable.Line(sentence));
        return ExitCodes.BadInput;
    }

    private static int With(Composition composition, string? choir, InvocationConfiguration surroundings, Func<ChoirFolder, int> act)
    {
        FileRead<ChoirFolder> folder = Content.Open(composition, null, choir);
        return folder.IsGood ? act(folder.Value) : Problems.Print(folder.Problems, surroundings.Error);
    }
}
