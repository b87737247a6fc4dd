using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Scores;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Repertoire.Drills;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Repertoire.Words;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup score drill</c>: an exercise out of the bars of a score.</summary>
internal static class ScoreDrillCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string> file = Options.Required("file", ScoreTexts.FileAbout);
        Option<string> part = new("--part") { Description = ScoreTexts.PartAbout, HelpName = "PART", Required = true };
        Option<string> bars = new("--bars") { Description = ScoreTexts.BarsAbout, HelpName = "A-B", Required = true };
        Option<bool> simple = new("--simple-rhythm") { Description = ScoreTexts.SimpleAbout };
        Option<string?> syllables = new("--syllables") { Description = ScoreTexts.SyllablesAbout, HelpName = "TEXT" };
        Option<string?> output = new("--out") { Description = ScoreTexts.OutAbout, HelpName = "FILE" };
        Option<string?> language = new("--language") { Description = ScoreTexts.LanguageAbout, HelpName = "CODE" };
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("drill", ScoreTexts.DrillAbout) { file };
        foreach (Option option in (IEnumerable<Option>)[part, bars, simple, syllables, output, language, choir, json])
        {
            command.Add(option);
        }

        command.SetAction(parsed =>
        {
            FileRead<OpenedScore> read = OpenedScore.Load(composition, parsed.GetValue(file)!, parsed.GetValue(choir));
            if (!read.IsGood)
            {
                return Problems.Print(read.Problems, parsed.InvocationConfiguration.Error);
            }

            ScoreLook look = ScoreLook.Of(read.Value.Score, read.Value.Map, LookQuestion.Plain);
            (ChosenBars? chosen, string problem) = ChosenBars.Of(read.Value, look, parsed.GetValue(part)!, (null, parsed.GetValue(bars)));
            return chosen is null
                ? Refuse(read.Value.Path, problem, parsed.InvocationConfiguration)
                : Make(read.Value, look, chosen, new(parsed.GetValue(simple), parsed.GetValue(syllables), parsed.GetValue(output), parsed.GetValue(language), parsed.GetValue(json)), parsed.InvocationConfiguration);
        });
        return command;
    }

    private static int Make(OpenedScore score, ScoreLook look, ChosenBars chosen, Wishes wishes, InvocationConfiguration surroundings)
    {
        DrillQuestion question = new(chosen.Look, chosen.From, chosen.To, wishes.SimpleRhythm, LanguageVowels.For(wishes.Language ?? score.Language), score.Folder.Choir.Parts);
        (Drill? drill, DrillRefusal? refusal) = DrillMaker.Make(score.Score, question, look.Clock);
        if (drill is null)
        {
            return Refuse(score.Path, ScoreTexts.NoDrill(refusal!.Value, chosen.Look.Singer.Name), surroundings);
        }

        (Exercise? exercise, string problem) = DrillExercise.Of(drill, chosen, score, wishes.Syllables);
        return exercise is null ? Refuse("--syllables", problem, surroundings)
            : wishes.Out is null && score.Folder.Exercises.Find(exercise.Id) is not null ? Refuse(score.Folder.ExercisePathFor(exercise.Id), ScoreTexts.DrillThere, surroundings)
            : Write(wishes.Out ?? score.Folder.ExercisePathFor(exercise.Id), (exercise, drill, wishes.AsJson), score, surroundings);
    }

    private static int Write(string path, (Exercise Exercise, Drill Drill, bool AsJson) made, OpenedScore score, InvocationConfiguration surroundings)
    {
        if (ChoirFolder.WriteExercise(path, made.Exercise) is { } reason)
        {
            return Refuse(path, reason, surroundings);
        }

        if (made.AsJson)
        {
            surroundings.Output.WriteLine((ExercisesReport.From([made.Exercise]) with { Written = path }).ToJson());
            return score.ExitCode;
        }

        surroundings.Output.Write(ExercisesText.One(made.Exercise));
        surroundings.Output.Write(made.Drill.Arrives ? "" : ScoreTexts.NotArriving(made.Exercise.Keys!.Limit) + "\n");
        surroundings.Output.WriteLine(ScoreTexts.DrillWritten(path, made.Exercise.Id));
        return score.ExitCode;
    }

    private static int Refuse(string place, string problem, InvocationConfiguration surroundings) =>
        Problems.Print([FileProblem.Whole(place, problem)], surroundings.Error);

    private sealed record Wishes(bool SimpleRhythm, string? Syllables, string? Out, string? Language, bool AsJson);
}
