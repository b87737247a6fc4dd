using System.CommandLine;
using WarmupConsole.App.Commands;
using WarmupConsole.App.Reports;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>Brings a new exercise into a choir's folder; nothing is written unless it is whole and wanted, and what was typed is shown when it is not.</summary>
internal sealed class NewExercise(Composition composition, ChoirFolder folder, PortChoice port, InvocationConfiguration surroundings)
{
    /// <summary>True to print what was written as JSON; then nothing is asked.</summary>
    internal bool PrintsJson { get; init; }

    /// <summary>Takes the rest of the fields as they are proposed, and writes.</summary>
    internal int AtOnce(ExerciseForm form)
    {
        if (!form.Has(ExerciseForm.Pattern) || !form.Has(ExerciseForm.Title))
        {
            surroundings.Error.WriteLine(AppTexts.AddNeeds);
            return ExitCodes.BadInput;
        }

        foreach (string field in OneExercise.Fields.Where(field => !form.Has(field)))
        {
            form = form.With(field, form.Proposed(field));
        }

        return IsGood(form) ? Write(form) : ExitCodes.BadInput;
    }

    /// <summary>Asks for what is missing, plays it, and writes when told to.</summary>
    internal int Asking(ExerciseForm form, TextReader answers)
    {
        if (!IsGood(form))
        {
            return ExitCodes.BadInput;
        }

        using PianoLine piano = new(composition, folder.Choir.Notes);
        ExerciseDialogue dialogue = new(piano, answers, surroundings.Output);
        bool isFull = dialogue.Fill(ref form, port);
        if (isFull && form.Exercise is { } exercise)
        {
            surroundings.Output.WriteLine(piano.Play(exercise, port));
            surroundings.Output.Write(ExerciseFile.Write([exercise]));
            isFull = dialogue.Agrees(AppTexts.AskSave(folder.ExercisePathFor(exercise.Id)));
        }

        return isFull ? Write(form) : Kept(form, ExitCodes.Ok);
    }

    private bool IsGood(ExerciseForm form)
    {
        foreach (FileProblem problem in form.Problems)
        {
            surroundings.Error.WriteLine(Printable.Line($"--{ExerciseForm.Option(problem.File)}: {problem.Message}"));
        }

        return form.Problems.Count == 0;
    }

    private int Write(ExerciseForm form)
    {
        Exercise exercise = form.Exercise!;
        string path = folder.ExercisePathFor(exercise.Id);
        if (ChoirFolder.WriteExercise(path, exercise) is { } reason)
        {
            Problems.Print([FileProblem.Whole(path, reason)], surroundings.Error);
            return Kept(form, ExitCodes.BadInput);
        }

        surroundings.Output.WriteLine(PrintsJson ? (ExercisesReport.From([exercise]) with { Written = path }).ToJson() : AppTexts.ExerciseWritten(path, exercise.Id));
        return ExitCodes.Ok;
    }

    private int Kept(ExerciseForm form, int code)
    {
        surroundings.Output.WriteLine();
        surroundings.Output.WriteLine(AppTexts.NotAdded);
        surroundings.Output.WriteLine(Printable.Line(form.AsCommand()));
        return code;
    }
}
