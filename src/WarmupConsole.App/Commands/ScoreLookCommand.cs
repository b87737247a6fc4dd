using System.CommandLine;
using System.Text;
using WarmupConsole.App.Scores;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup score look</c>: where a score is hard for this choir.</summary>
internal static class ScoreLookCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string> file = Options.Required("file", ScoreTexts.FileAbout);
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Option<string?> html = new("--html") { Description = ScoreTexts.LookHtmlAbout, HelpName = "FILE" };
        Option<bool> played = new("--played") { Description = ScoreTexts.PlayedAbout };
        Option<bool> all = new("--all") { Description = ScoreTexts.LookAllAbout };
        Option<string?> language = new("--language") { Description = ScoreTexts.LanguageAbout, HelpName = "CODE" };
        Command command = new("look", ScoreTexts.LookAbout) { file };
        foreach (Option option in (IEnumerable<Option>)[choir, json, html, played, all, language])
        {
            command.Add(option);
        }

        command.SetAction(parsed =>
        {
            InvocationConfiguration surroundings = parsed.InvocationConfiguration;
            FileRead<OpenedScore> read = OpenedScore.Load(composition, parsed.GetValue(file)!, parsed.GetValue(choir));
            Problems.Print(read.Value?.Problems ?? read.Problems, surroundings.Error);
            if (!read.IsGood)
            {
                return ExitCodes.BadInput;
            }

            LookSources sources = LookSources.Of(read.Value, parsed.GetValue(language), parsed.GetValue(played));
            ScoreLook look = ScoreLook.Of(read.Value.Score, read.Value.Map, sources.Question);
            return (parsed.GetValue(html), parsed.GetValue(json)) switch
            {
                ({ } path, _) => WritePage(path, ScorePage.Write(read.Value, look, new(read.Value, look, sources)), read.Value.ExitCode, surroundings),
                (_, true) => Print(ScoreReport.From(look).ToJson() + "\n", read.Value.ExitCode, surroundings),
                _ => Print(new LookText(read.Value, look, sources, parsed.GetValue(all)).Write(), read.Value.ExitCode, surroundings),
            };
        });
        return command;
    }

    private static int Print(string text, int code, InvocationConfiguration surroundings)
    {
        surroundings.Output.Write(text);
        return code;
    }

    private static int WritePage(string path, string page, int code, InvocationConfiguration surroundings)
    {
        if (NewFile.Write(path, Encoding.UTF8.GetBytes(page)) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(path, reason)], surroundings.Error);
        }

        return Print(AppTexts.PageWritten(path) + "\n", code, surroundings);
    }
}
