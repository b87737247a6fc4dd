using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;

namespace WarmupConsole.App.Commands;

/// <summary>The fields of <c>keys</c> in a plan, as options of a command; what they may hold is what a plan may hold.</summary>
internal sealed class LadderOptions
{
    private readonly Option<string?>[] texts =
    [
        Text("start", "TONIC", AppTexts.StartAbout),
        Text("shape", "SHAPE", AppTexts.ShapeAbout),
        Text("limit", "WHO", AppTexts.LimitAbout),
    ];

    private readonly Option<int?>[] numbers =
    [
        Number("reach", AppTexts.ReachAbout),
        Number("tolerance", AppTexts.ToleranceAbout),
        Number("by", AppTexts.ByAbout),
        Number("most", AppTexts.MostAbout),
    ];

    private readonly Option<bool> octave = new("--octave") { Description = AppTexts.OctaveAbout };

    private IEnumerable<Option> All => [.. texts, .. numbers, octave];

    internal void AddTo(Command command)
    {
        foreach (Option option in All)
        {
            command.Add(option);
        }
    }

    internal bool IsGivenIn(CommandResult result) => All.Any(option => result.GetResult(option) is { Implicit: false });

    /// <summary>The fields that were given, by their names in plans.</summary>
    internal IReadOnlyList<(string Name, string Value)> Given(ParseResult parsed) =>
    [
        .. texts.Select(option => (Name(option), parsed.GetValue(option)!)).Where(field => field.Item2 is not null),
        .. numbers.Where(option => parsed.GetValue(option) is not null)
            .Select(option => (Name(option), parsed.GetValue(option)!.Value.ToString(CultureInfo.InvariantCulture))),
        .. parsed.GetValue(octave) ? [(Name(octave), "true")] : Array.Empty<(string, string)>(),
    ];

    private static string Name(Option option) => option.Name.TrimStart('-');

    private static Option<string?> Text(string name, string help, string about) => new("--" + name) { Description = about, HelpName = help };

    private static Option<int?> Number(string name, string about) => new("--" + name) { Description = about, HelpName = "NUMBER" };
}
