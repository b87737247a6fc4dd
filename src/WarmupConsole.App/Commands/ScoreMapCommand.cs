using System.CommandLine;
using WarmupConsole.App.Scores;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Storage.Scores;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup score map</c>: which part of the choir sings which part of the score, confirmed once.</summary>
internal static class ScoreMapCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string> file = Options.Required("file", ScoreTexts.FileAbout);
        Option<string?> choir = Options.Choir();
        Option<bool> yes = new("--yes") { Description = ScoreTexts.MapYesAbout };
        Option<string[]> parts = new("--part") { Description = ScoreTexts.MapPartAbout, HelpName = "A=B" };
        Option<bool> json = Options.Json();
        Command command = new("map", ScoreTexts.MapAbout);
        foreach (Option option in (IEnumerable<Option>)[parts, yes, choir, json])
        {
            command.Add(option);
        }

        command.Add(file);
        command.SetAction(parsed =>
        {
            FileRead<OpenedScore> score = OpenedScore.Load(composition, parsed.GetValue(file)!, parsed.GetValue(choir));
            bool isSure = parsed.GetValue(yes) || parsed.GetValue(json);
            return score.IsGood
                ? Map(score.Value, parsed.GetValue(parts) ?? [], isSure ? null : composition.Answers, (isSure, parsed.GetValue(json), parsed.InvocationConfiguration))
                : Problems.Print(score.Problems, parsed.InvocationConfiguration.Error);
        });
        return command;
    }

    private static int Map(OpenedScore score, string[] changes, TextReader? answers, (bool Yes, bool AsJson, InvocationConfiguration Surroundings) how)
    {
        InvocationConfiguration surroundings = how.Surroundings;
        Problems.Print(score.Problems, surroundings.Error);
        string path = ScoreMapFile.PathFor(score.Folder, score.Path);
        if (score.MapPath is not null)
        {
            surroundings.Output.Write(how.AsJson ? "" : MapText.Write(score.Title, score.Map));
            return Problems.Print([FileProblem.Whole(score.MapPath, ScoreTexts.MapIsThere)], surroundings.Error);
        }

        ScoreMap map = score.Map;
        foreach (string change in changes)
        {
            (ScoreMap? changed, string problem) = MapChange.Apply(map, score.Folder.Choir.Parts, change);
            if (changed is null)
            {
                return Problems.Print([FileProblem.Whole("--part", problem)], surroundings.Error);
            }

            map = changed;
        }

        surroundings.Output.Write(how.AsJson ? "" : MapText.Write(score.Title, map));
        return how.AsJson ? Keep(path, map, score, (surroundings, MapReport.From(map, path).ToJson()))
            : how.Yes || changes.Length > 0 && answers is null ? Keep(path, map, score, (surroundings, ScoreTexts.Kept(path)))
            : answers is null ? Unanswered(surroundings)
            : Ask(map, score, answers, surroundings) is { } confirmed ? Keep(path, confirmed, score, (surroundings, ScoreTexts.Kept(path)))
            : Dropped(surroundings);
    }

    /// <summary>What was confirmed, or null when it was left.</summary>
    private static ScoreMap? Ask(ScoreMap map, OpenedScore score, TextReader answers, InvocationConfiguration surroundings)
    {
        while (true)
        {
            surroundings.Output.Write(ScoreTexts.MapConfirm);
            string? answer = answers.ReadLine()?.Trim();
            if (answer is null or "q" or "Q")
            {
                return null;
            }

            if (answer.Length == 0)
            {
                return map;
            }

            (ScoreMap? changed, string problem) = MapChange.Apply(map, score.Folder.Choir.Parts, answer);
            map = changed ?? map;
            surroundings.Output.Write(changed is null ? Printable.Line(problem) + "\n" : MapText.Write(score.Title, map));
        }
    }

    private static int Keep(string path, ScoreMap map, OpenedScore score, (InvocationConfiguration Surroundings, string Words) how)
    {
        if (ScoreMapFile.WriteTo(path, map) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(path, reason)], how.Surroundings.Error);
        }

        how.Surroundings.Output.WriteLine(how.Words);
        return score.ExitCode;
    }

    private static int Unanswered(InvocationConfiguration surroundings)
    {
        surroundings.Error.WriteLine(ScoreTexts.MapNeedsYes);
        return ExitCodes.BadInput;
    }

    private static int Dropped(InvocationConfiguration surroundings)
    {
        surroundings.Output.WriteLine(ScoreTexts.NotKept);
        return ExitCodes.Ok;
    }
}
