using System.CommandLine;
using WarmupConsole.App.Running;

namespace WarmupConsole.App.Commands;

/// <summary>How the last weeks are reviewed.</summary>
/// <param name="Html">A page to write.</param>
/// <param name="Csv">Counts instead of sentences.</param>
/// <param name="Screen">On the whole screen, page by page.</param>
/// <param name="Weeks">How far back.</param>
internal sealed record SeasonOptions(Option<string?> Html, Option<bool> Csv, Option<bool> Screen, Option<int> Weeks)
{
    private const int MostWeeks = 5000;

    internal static SeasonOptions AddTo(Command command)
    {
        Option<int> weeks = new("--weeks") { Description = AppTexts.WeeksAbout, HelpName = "WEEKS", DefaultValueFactory = _ => SeasonLogs.UsualWeeks };
        weeks.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 0 or > MostWeeks)
            {
                result.AddError(AppTexts.BadWeeks);
            }
        });
        SeasonOptions options = new(new("--html") { Description = AppTexts.HtmlAbout, HelpName = "FILE" }, new("--csv") { Description = AppTexts.CsvAbout }, new("--screen") { Description = AppTexts.ReviewScreenAbout }, weeks);
        command.Add(options.Html);
        command.Add(options.Csv);
        command.Add(options.Screen);
        command.Add(options.Weeks);
        return options;
    }

    internal (string? Page, bool AsCsv, bool OnScreen, int Weeks) Of(ParseResult parsed) => (parsed.GetValue(Html), parsed.GetValue(Csv), parsed.GetValue(Screen), parsed.GetValue(Weeks));
}
