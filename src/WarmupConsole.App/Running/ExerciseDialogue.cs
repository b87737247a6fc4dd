using WarmupConsole.App.Reports;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>Asks for a new exercise, field by field: Enter takes what is proposed, and what cannot be is asked again.</summary>
internal sealed class ExerciseDialogue(PianoLine piano, TextReader answers, TextWriter output)
{
    /// <summary>One row per question, in their order; the purposes and the stage come after everything that they are proposed from.</summary>
    private static readonly (string Field, string Question)[] Questions =
    [
        (ExerciseForm.Mode, AppTexts.AskMode),
        (ExerciseForm.Pattern, AppTexts.AskLine),
        (ExerciseForm.Tempo, AppTexts.AskTempo),
        ("articulation", AppTexts.AskArticulation),
        ("dynamics", AppTexts.AskDynamics),
        (ExerciseForm.Syllables, AppTexts.AskSyllables),
        ("purposes", AppTexts.AskPurposes),
        ("stage", AppTexts.AskStage),
        (ExerciseForm.Title, AppTexts.AskTitle),
        (ExerciseForm.Id, AppTexts.AskId),
        ("instruction", AppTexts.AskInstruction),
    ];

    /// <summary>The form with all that was said; false once nobody answers any longer.</summary>
    internal bool Fill(ref ExerciseForm form, PortChoice port)
    {
        foreach ((string field, string question) in Questions)
        {
            if (field == "purposes")
            {
                output.Write(ExercisesText.One(form.Exercise!));
            }

            if (!form.Has(field) && !Ask(ref form, (field, question), port))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>The answer to a question of yes or no: only y is yes.</summary>
    internal bool Agrees(string question)
    {
        output.Write(question);
        return answers.ReadLine()?.Trim().ToLowerInvariant() is "y" or "yes";
    }

    private bool Ask(ref ExerciseForm form, (string Field, string Question) row, PortChoice port)
    {
        while (true)
        {
            string proposed = form.Proposed(row.Field);
            output.Write(AppTexts.Ask(row.Question, proposed));
            if (answers.ReadLine()?.Trim() is not { } answer)
            {
                return false;
            }

            bool isPlayed = row.Field == ExerciseForm.Pattern && answer.Length == 0;
            ExerciseForm filled = isPlayed ? Play(form, port) : form.With(row.Field, answer.Length == 0 ? proposed : answer);
            if (IsSettled(filled, row.Field))
            {
                form = filled;
                return true;
            }
        }
    }

    /// <summary>Says what is wrong with the field; a title must be, and a line.</summary>
    private bool IsSettled(ExerciseForm form, string field)
    {
        if (form.Problems.FirstOrDefault(problem => problem.File == field) is { } problem)
        {
            output.WriteLine(Printable.Line(problem.Message));
            return false;
        }

        return form.Has(field) || field is not (ExerciseForm.Title or ExerciseForm.Id or ExerciseForm.Pattern);
    }

    /// <summary>Takes the line and its tempo from the piano; as it was when nothing was heard.</summary>
    private ExerciseForm Play(ExerciseForm form, PortChoice port)
    {
        output.WriteLine(piano.Open(port));
        if (!piano.IsOpen)
        {
            return form;
        }

        output.WriteLine(AppTexts.PlayNow);
        answers.ReadLine();
        IReadOnlyList<PlayedNote> played = piano.Finish();
        if (played.Count == 0)
        {
            output.WriteLine(AppTexts.NothingHeard);
            return form;
        }

        PlayedLine line = PlayedLine.Of(played, Tonic(played), form.Exercise?.Mode ?? default);
        output.WriteLine(AppTexts.Heard(PatternText.Write(line.Pattern)));
        output.Write(AppTexts.AskHeard);
        string said = answers.ReadLine()?.Trim() ?? "";
        ExerciseForm heard = form.With(ExerciseForm.Pattern, said.Length == 0 ? PatternText.Write(line.Pattern) : said);
        return form.Has(ExerciseForm.Tempo) ? heard : heard.With(ExerciseForm.Tempo, Number(line.Tempo.BeatsPerMinute));
    }

    private int Tonic(IReadOnlyList<PlayedNote> played)
    {
        int first = played.MinBy(note => note.Start).Midi;
        while (true)
        {
            output.Write(AppTexts.AskTonic(piano.Notes.Write(KeySpelling.TonicFor(first, Mode.Major))));
            string? answer = answers.ReadLine()?.Trim();
            if (string.IsNullOrEmpty(answer))
            {
                return first;
            }

            if (piano.Notes.TryParse(answer, out Pitch tonic))
            {
                return tonic.Midi;
            }
        }
    }

    private static string Number(double number) => number.ToString("0", System.Globalization.CultureInfo.InvariantCulture);
}
