using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary>What the director may say about a plan to be proposed or explained.</summary>
internal sealed class PlannerOptions
{
    private const int MostVariants = 9;

    private readonly Option<string?> _focus = new("--focus") { Description = AppTexts.FocusAbout, HelpName = "WHAT" };
    private readonly Option<string?> _tonight = new("--tonight") { Description = AppTexts.TonightAbout, HelpName = "WORDS" };
    private readonly Option<int?> _minutes = Whole("--minutes", AppTexts.MinutesAbout, "MINUTES", 10, 30);
    private readonly Option<int?> _rehearsal = Whole("--rehearsal", AppTexts.RehearsalAbout, "MINUTES", 30, 300);
    private readonly Option<int?> _variant = Whole("--variant", AppTexts.VariantAbout, "NUMBER", 1, MostVariants);

    internal Option<DateOnly?> Date { get; } = new("--date") { Description = AppTexts.DateAbout, HelpName = "DATE", CustomParser = ReadDate };

    internal Option<string?> Choir { get; } = Options.Choir();

    internal Option<bool> Json { get; } = Options.Json();

    internal PlannerOptions AddTo(Command command, bool isProposal)
    {
        Option[] options = isProposal ? [Choir, Date, _minutes, _rehearsal, _focus, _tonight, _variant, Json] : [Choir, _focus, _tonight, Json];
        foreach (Option option in options)
        {
            command.Add(option);
        }

        return this;
    }

    /// <summary>The input with what was said; or why it cannot be understood.</summary>
    internal FileRead<NextPlanInput> Said(ParseResult parsed, NextPlanInput input)
    {
        (string? focus, string? tonight) = (parsed.GetValue(_focus), parsed.GetValue(_tonight));
        PlanFocus? meant = focus is null ? null : PlanFocus.Read(focus, input.Choir, input.Findings);
        Tonight? evening = tonight is null ? Tonight.AsUsual : TonightText.Read(tonight, input.Choir);
        FileProblem?[] problems =
        [
            focus is not null && meant is null ? FileProblem.Whole("--focus", AppTexts.UnknownFocus(focus, PlanFocus.Names(input.Choir, input.Findings))) : null,
            evening is null ? FileProblem.Whole("--tonight", AppTexts.UnknownTonight(tonight!)) : null,
        ];
        return problems.OfType<FileProblem>().ToArray() is { Length: > 0 } told ? new(null, told) : new(With(parsed, input with { Focus = meant, Tonight = evening! }), []);
    }

    private NextPlanInput With(ParseResult parsed, NextPlanInput input)
    {
        int? rehearsal = parsed.GetValue(_rehearsal);
        Choir choir = input.Tonight.Of(rehearsal is { } minutes ? input.Choir with { RehearsalMinutes = minutes } : input.Choir);
        return input with
        {
            Choir = choir,
            Minutes = parsed.GetValue(_minutes) ?? (rehearsal is null ? null : NextPlanInput.UsualMinutes(choir)),
            Variant = parsed.GetValue(_variant) ?? 1,
        };
    }

    private static Option<int?> Whole(string name, string about, string help, int least, int most)
    {
        Option<int?> option = new(name) { Description = about, HelpName = help };
        option.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && !(int.TryParse(result.Tokens[0].Value, NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value >= least && value <= most))
            {
                result.AddError(AppTexts.OutOfRange(name, result.Tokens[0].Value, least, most));
            }
        });
        return option;
    }

    private static DateOnly? ReadDate(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (DayText.TryRead(text, out DateOnly date))
        {
            return date;
        }

        result.AddError(AppTexts.BadDate(text));
        return null;
    }
}
