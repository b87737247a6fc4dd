using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup ranges accept</c>: what the logs propose for a part becomes its range from today on.</summary>
internal static class RangeAcceptance
{
    internal static int Run(Composition composition, ChoirFolder folder, (string Part, bool AsJson) asked, InvocationConfiguration surroundings)
    {
        string part = asked.Part;
        if (folder.Choir.Parts.All(known => known.Id != part))
        {
            return Refuse(AppTexts.NoSuchPart(part, folder.Choir.Parts.Select(known => known.Id)), surroundings);
        }

        RangeAdvice[] advice = [.. SeasonReview.Of(folder).Ranges.Where(one => one.Part == part)];
        if (advice.Length == 0)
        {
            return Refuse(AppTexts.NoAdvice(part), surroundings);
        }

        MeasuredRange accepted = new(part, composition.Today, RangeAdvice.Together(advice));
        if (RangesFile.Append(folder.RangesPath, accepted) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(folder.RangesPath, reason)], surroundings.Error);
        }

        if (asked.AsJson)
        {
            Choir changed = RangesFile.Join(folder.Choir, [accepted]).AsOf(composition.Today);
            RangesReport report = RangesReport.From(changed with { Parts = [.. changed.Parts.Where(one => one.Id == part)] }, composition.Today);
            surroundings.Output.WriteLine((report with { Written = folder.RangesPath }).ToJson());
            return ExitCodes.Ok;
        }

        foreach (RangeAdvice one in advice)
        {
            surroundings.Output.WriteLine(Printable.Line(AppTexts.Accepted(FindingText.Title(one, folder.Choir), DayText.Write(composition.Today))));
        }

        return ExitCodes.Ok;
    }

    private static int Refuse(string sentence, InvocationConfiguration surroundings)
    {
        surroundings.Error.WriteLine(Printable.Line(sentence));
        return ExitCodes.BadInput;
    }
}
