using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup need</c>: what to work on, without any score.</summary>
internal static class NeedCommand
{
    /// <summary>The fields of a need; each is an option, and what it may hold is what the file may hold.</summary>
    private static readonly (string Name, string Help, string About)[] Fields =
    [
        ("part", "PART", AppTexts.NeedPartAbout),
        ("pitch", "PITCH", AppTexts.NeedPitchAbout),
        ("region", "RANGE", AppTexts.NeedRegionAbout),
        ("purpose", "PURPOSE", AppTexts.NeedPurposeAbout),
        ("kind", "KIND", AppTexts.NeedKindAbout),
        ("piece", "TITLE", AppTexts.NeedPieceAbout),
        ("bars", "BARS", AppTexts.NeedBarsAbout),
        ("until", "DATE", AppTexts.NeedUntilAbout),
    ];

    internal static Command Create(Composition composition)
    {
        Command group = new("need", AppTexts.NeedAbout);
        group.Add(AddCommand(composition));
        group.Add(ListCommand(composition));
        group.Add(DoneCommand(composition));
        return group;
    }

    private static Command AddCommand(Composition composition)
    {
        Option<string?>[] fields = [.. Fields.Select(field => new Option<string?>("--" + field.Name) { Description = field.About, HelpName = field.Help })];
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("add", AppTexts.NeedAddAbout);
        foreach (Option option in (IEnumerable<Option>)[.. fields, choir, json])
        {
            command.Add(option);
        }

        command.SetAction(parsed => Change(
            Open(composition, parsed.GetValue(choir)),
            book => book.With(Given(fields.Select(parsed.GetValue))),
            book => parsed.GetValue(json)
                ? Report(book, book.Needs.Count)
                : Printable.Line(AppTexts.NeedKept(book.Needs.Count, book.Needs[^1].WordsIn(book.Notes))),
            parsed.InvocationConfiguration));
        return command;
    }

    private static Command ListCommand(Composition composition)
    {
        Option<string?> choir = Options.Choir();
        Option<bool> all = new("--all") { Description = AppTexts.NeedAllAbout };
        Option<bool> json = Options.Json();
        Command command = new("list", AppTexts.NeedListAbout);
        command.Add(choir);
        command.Add(all);
        command.Add(json);
        command.SetAction(parsed => Print(
            Open(composition, parsed.GetValue(choir)),
            need => parsed.GetValue(all) || need.IsOpenOn(Today(composition)),
            parsed.GetValue(json),
            parsed.InvocationConfiguration));
        return command;
    }

    private static Command DoneCommand(Composition composition)
    {
        Argument<int> number = new("number") { Description = AppTexts.NeedNumberAbout };
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("done", AppTexts.NeedDoneAbout);
        command.Add(number);
        command.Add(choir);
        command.Add(json);
        command.SetAction(parsed => Change(
            Open(composition, parsed.GetValue(choir)),
            book => book.WithDone(parsed.GetValue(number), Today(composition)),
            book => parsed.GetValue(json)
                ? Report(book, parsed.GetValue(number))
                : Printable.Line(AppTexts.NeedDone(book.Needs[parsed.GetValue(number) - 1].WordsIn(book.Notes))),
            parsed.InvocationConfiguration));
        return command;
    }

    private static DateOnly Today(Composition composition) => DateOnly.FromDateTime(composition.Wall.GetLocalNow().DateTime);

    private static FileRead<NeedsBook> Open(Composition composition, string? choir)
    {
        FileRead<ChoirFolder> folder = Content.Open(composition, null, choir);
        return folder.IsGood ? NeedsBook.Open(folder.Value) : new(null, folder.Problems);
    }

    /// <summary>The values that were given, by their names; who it concerns is always written.</summary>
    private static IReadOnlyList<(string Name, string Value)> Given(IEnumerable<string?> values) =>
        [.. Fields.Zip(values, (field, value) => (field.Name, Value: value ?? (field.Name == "part" ? "everyone" : null)!)).Where(field => field.Value is not null)];

    private static int Change(FileRead<NeedsBook> book, Func<NeedsBook, FileRead<NeedsBook>> change, Func<NeedsBook, string> words, InvocationConfiguration surroundings)
    {
        FileRead<NeedsBook> changed = book.IsGood ? change(book.Value) : book;
        if (!changed.IsGood)
        {
            return Problems.Print(changed.Problems, surroundings.Error);
        }

        if (changed.Value.Save() is { } reason)
        {
            return Problems.Print([FileProblem.Whole(NeedsFile.Name, reason)], surroundings.Error);
        }

        surroundings.Output.WriteLine(words(changed.Value));
        return ExitCodes.Ok;
    }

    /// <summary>The one need that was changed, by its number.</summary>
    private static string Report(NeedsBook book, int number) =>
        (NeedsReport.From([(number, book.Needs[number - 1])]) with { Written = book.FilePath }).ToJson();

    private static int Print(FileRead<NeedsBook> book, Func<ChoirNeed, bool> isShown, bool asJson, InvocationConfiguration surroundings)
    {
        if (!book.IsGood)
        {
            return Problems.Print(book.Problems, surroundings.Error);
        }

        (int Number, ChoirNeed Need)[] shown = [.. book.Value.Needs.Select((need, index) => (index + 1, need)).Where(need => isShown(need.need))];
        if (asJson)
        {
            surroundings.Output.WriteLine(NeedsReport.From(shown).ToJson());
            return ExitCodes.Ok;
        }

        surroundings.Output.WriteLine(shown.Length == 0 ? AppTexts.NoNeeds : string.Join('\n', shown.Select(need => Printable.Line(AppTexts.NeedKept(need.Number, need.Need.WordsIn(book.Value.Notes))))));
        return ExitCodes.Ok;
    }
}
