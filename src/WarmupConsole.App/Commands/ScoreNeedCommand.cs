using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Scores;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup score need</c>: hard bars become needs, which the next plan weighs.</summary>
internal static class ScoreNeedCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string> file = Options.Required("file", ScoreTexts.FileAbout);
        Option<string> part = new("--part") { Description = ScoreTexts.PartAbout, HelpName = "PART", Required = true };
        Option<int?> passage = new("--passage") { Description = ScoreTexts.PassageAbout, HelpName = "N" };
        Option<string?> bars = new("--bars") { Description = ScoreTexts.BarsAbout, HelpName = "A-B" };
        Option<string?> until = new("--until") { Description = AppTexts.NeedUntilAbout, HelpName = "DATE" };
        Option<string?> language = new("--language") { Description = ScoreTexts.LanguageAbout, HelpName = "CODE" };
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("need", ScoreTexts.NeedAbout) { file };
        foreach (Option option in (IEnumerable<Option>)[part, passage, bars, until, language, choir, json])
        {
            command.Add(option);
        }

        command.Validators.Add(result =>
        {
            if ((result.GetResult(passage) is null) == (result.GetResult(bars) is null))
            {
                result.AddError(ScoreTexts.PassageOrBars);
            }
        });
        command.SetAction(parsed =>
        {
            InvocationConfiguration surroundings = parsed.InvocationConfiguration;
            FileRead<OpenedScore> read = OpenedScore.Load(composition, parsed.GetValue(file)!, parsed.GetValue(choir));
            if (!read.IsGood)
            {
                return Problems.Print(read.Problems, surroundings.Error);
            }

            ScoreLook look = ScoreLook.Of(read.Value.Score, read.Value.Map, LookSources.Of(read.Value, parsed.GetValue(language), asPlayed: false).Question);
            (ChosenBars? chosen, string problem) = ChosenBars.Of(read.Value, look, parsed.GetValue(part)!, (parsed.GetValue(passage), parsed.GetValue(bars)));
            return chosen is null
                ? Problems.Print([FileProblem.Whole(read.Value.Path, problem)], surroundings.Error)
                : Keep(read.Value, chosen, (parsed.GetValue(until), parsed.GetValue(json)), surroundings);
        });
        return command;
    }

    private static int Keep(OpenedScore score, ChosenBars chosen, (string? Until, bool AsJson) how, InvocationConfiguration surroundings)
    {
        if (NoteRange.Of(chosen.Look.Line.Notes.Where(note => note.Bar >= chosen.From && note.Bar <= chosen.To)) is not { } range)
        {
            return Problems.Print([FileProblem.Whole(score.Path, ScoreTexts.NothingSungThere)], surroundings.Error);
        }

        ChoirNeed origin = new() { Who = chosen.Look.Singer.Id, Piece = score.Title, Bars = LookText.Bars(score.Score, chosen.From, chosen.To) };
        FileRead<NeedsBook> old = NeedsBook.Open(score.Folder);
        IReadOnlyList<ChoirNeed> needs = PassageNeeds.Of(chosen.Look.Between(chosen.From, chosen.To), new(range.Lowest.Pitch, range.Highest.Pitch), origin);
        (FileRead<NeedsBook> book, IReadOnlyList<string> kept) = old.IsGood ? Added(old.Value, needs, how.Until) : (old, []);
        return !book.IsGood ? Problems.Print(book.Problems, surroundings.Error)
            : book.Value.Save() is { } reason ? Problems.Print([FileProblem.Whole(NeedsFile.Name, reason)], surroundings.Error)
            : Tell(how.AsJson ? [Report(book.Value, old.Value!.Needs.Count)] : kept.Select(Printable.Line), score.ExitCode, surroundings);
    }

    /// <summary>With each need that is not there yet, and what is said of each.</summary>
    private static (FileRead<NeedsBook> Book, IReadOnlyList<string> Words) Added(NeedsBook old, IReadOnlyList<ChoirNeed> needs, string? until)
    {
        FileRead<NeedsBook> book = new(old, []);
        List<string> words = [];
        foreach (ChoirNeed need in needs)
        {
            if (book.Value!.Needs.Any(known => known with { Until = null } == need))
            {
                words.Add(ScoreTexts.NeedThere(need.WordsIn(old.Notes)));
                continue;
            }

            book = book.Value.With(Fields(need, until, old.Notes));
            if (!book.IsGood)
            {
                return (book, []);
            }

            words.Add(AppTexts.NeedKept(book.Value.Needs.Count, book.Value.Needs[^1].WordsIn(old.Notes)));
        }

        return (book, words);
    }

    private static IReadOnlyList<(string Name, string Value)> Fields(ChoirNeed need, string? until, NoteNaming notes)
    {
        (string Name, string? Value)[] all =
        [
            ("part", need.Who),
            ("pitch", need.Pitch is { } pitch ? notes.Write(pitch) : null),
            ("region", need.Region is { } region ? region.In(notes) : null),
            ("purpose", need.Purpose is { } purpose ? PurposeData.Id(purpose) : null),
            ("piece", need.Piece),
            ("bars", need.Bars),
            ("until", until),
        ];
        return [.. all.Where(field => field.Value is not null).Select(field => (field.Name, field.Value!))];
    }

    /// <summary>The needs that are new.</summary>
    private static string Report(NeedsBook book, int before) =>
        (NeedsReport.From(book.Needs.Index().Skip(before).Select(need => (need.Index + 1, need.Item))) with { Written = book.FilePath }).ToJson();

    private static int Tell(IEnumerable<string> lines, int code, InvocationConfiguration surroundings)
    {
        foreach (string line in lines)
        {
            surroundings.Output.WriteLine(line);
        }

        return code;
    }
}
