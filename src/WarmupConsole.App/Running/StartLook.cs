using WarmupConsole.App.Reports;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Yaml;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.App.Running;

/// <summary>Finds out what the first picture adds: the check of the plan, what the last weeks showed, what is needed.</summary>
internal static class StartLook
{
    internal static StartCard Of(Composition composition, Content content) => new(
        Files(content),
        Check(content),
        [.. SeasonReview.Of(content.Folder).Findings.Select(finding => Printable.Line(FindingText.Title(finding, content.Folder.Choir)))],
        Needs(composition, content));

    private static string Files(Content content) => Printable.Line(
        content.Plan.Path.Length == 0 ? content.Folder.Root : AppTexts.FolderAndPlan(content.Folder.Root, Path.GetFileName(content.Plan.Path)));

    private static string Check(Content content)
    {
        CheckedPlan plan = new(content, EarlierPlans.Before(content.Folder, content.Plan).Plans);
        string[] counts = [.. Enum.GetValues<PlanSeverity>().OrderDescending().Select(severity => Count(plan, severity)).Where(words => words.Length > 0)];
        return content.Warmup.Steps.Count == 0 ? AppTexts.NothingToCheck
            : counts.Length == 0 ? AppTexts.NothingRemarked
            : Printable.Line($"{string.Join(", ", counts)}: {plan.Remarks.Open[0].Sentence}");
    }

    private static string Count(CheckedPlan plan, PlanSeverity severity) => plan.Count(severity) switch
    {
        0 => "",
        1 => $"1 {CheckedPlan.Word(severity)}",
        int count => $"{count} {CheckedPlan.Word(severity)}s",
    };

    private static IReadOnlyList<string> Needs(Composition composition, Content content)
    {
        FileRead<NeedsBook> book = NeedsBook.Open(content.Folder);
        return book.IsGood
            ? [.. book.Value.Needs.Where(need => need.IsOpenOn(composition.Today)).Select(need => Printable.Line(need.WordsIn(book.Value.Notes)))]
            : [.. book.Problems.Select(problem => Printable.Line(problem.ToString()))];
    }
}
