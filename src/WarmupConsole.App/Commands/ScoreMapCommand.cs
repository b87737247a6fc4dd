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
        Command command = new("map", ScoreTexts.MapAbout);
        foreach (Option option in (IEnumerable<Option>)[parts, yes, choir])
        {
            command.Add(option);
        }

        command.Add(file);
        command.SetAction(parsed =>
        {
            FileRead<OpenedScore> score = OpenedScore.Load(composition, parsed.GetValue(file)!, parsed.GetValue(choir));
            return score.IsGood
                ? Map(score.Value, parsed.GetValue(parts) ?? [], parsed.GetValue(yes) ? null : composition.Answers, (parsed.GetValue(yes), parsed.InvocationConfiguration))
                : Problems.Print(score.Problems, parsed.InvocationConfiguration.Error);
        });
        return command;
    }

    private static int Map(OpenedScore score, string[] changes, TextReader? answers, (bool Yes, InvocationConfiguration Surroundings) how)
    {
        InvocationConfiguration surroundings = how.Surroundings;
        Problems.Print(score.Problems, surroundings.Error);
        string path = ScoreMapFile.PathFor(score.Folder, score.Path);
        if (score.MapPath is not null)
        {
            surroundings.Output.Write(MapText.Write(score.Title, score.Map));
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

        surroundings.Output.Write(MapText.Write(score.Title, map));
        return how.Yes || changes.Length > 0 && answers is null ? Keep(path, map, score, surroundings)
            : answers is null ? Unanswered(surroundings)
            : Ask(map, score, answers, surroundings) is { } confirmed ? Keep(path, confirmed, score, surroundings)
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

    private static int Keep(string path, ScoreMap map, OpenedScore score, InvocationConfiguration surroundings)
    {
        if (ScoreMapFile.WriteTo(path, map) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(path, reason)], surroundings.Error);
        }

        surroundings.Output.WriteLine(ScoreTexts.Kept(path));
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
