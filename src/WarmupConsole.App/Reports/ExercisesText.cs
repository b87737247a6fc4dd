using System.Globalization;
using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Reports;

/// <summary>Exercises for a director to read.</summary>
internal static class ExercisesText
{
    /// <summary>A line each: id, stage, title, purposes.</summary>
    internal static string List(IReadOnlyList<Exercise> exercises)
    {
        if (exercises.Count == 0)
        {
            return AppTexts.NoExercises + "\n";
        }

        int id = exercises.Max(exercise => exercise.Id.Length);
        int title = exercises.Max(exercise => exercise.Title.Length);
        StringBuilder text = new();
        foreach (Exercise exercise in exercises)
        {
            string purposes = string.Join(", ", exercise.Purposes.Select(PurposeData.Id));
            text.Append(Printable.Line($"{exercise.Id.PadRight(id)}  {StageData.Words(exercise.Stage),-9}  {exercise.Title.PadRight(title)}  {purposes}".TrimEnd())).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Everything about one.</summary>
    internal static string One(Exercise exercise)
    {
        StringBuilder text = new();
        text.Append(Printable.Line($"{exercise.Title} ({exercise.Id}), {StageData.Words(exercise.Stage)}")).Append('\n');
        foreach ((string name, string value) in Rows(exercise).Where(row => row.Value.Length > 0))
        {
            text.Append(Printable.Line($"  {name,-12} {value}")).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<(string Name, string Value)> Rows(Exercise exercise)
    {
        (Tempo usual, Tempo from, Tempo to) = exercise.Tempo;
        return
        [
            .. exercise.Pattern is { } pattern ? Sung(exercise, pattern) : Counted(exercise),
            ("tempo", string.Create(CultureInfo.InvariantCulture, $"{usual.BeatsPerMinute:0.#}, {TempoWordData.Word(usual)} ({from.BeatsPerMinute:0.#} to {to.BeatsPerMinute:0.#})")),
            ("keys", exercise.Keys is { } keys ? Keys(keys, exercise) : ""),
            ("purposes", string.Join(", ", exercise.Purposes.Select(PurposeData.Words))),
            .. Demands(exercise),
            ("instruction", exercise.Instruction),
            ("listen", exercise.Listen),
            ("caution", exercise.Caution),
        ];
    }

    private static IEnumerable<(string Name, string Value)> Sung(Exercise exercise, Pattern pattern) =>
    [
        ("degrees", PatternText.Write(pattern)),
        ("syllables", SyllableText.Write(pattern)),
        .. exercise.Voices.Select(voice => (string.Join(", ", voice.Parts), $"{PatternText.Write(voice.Placed)}  {SyllableText.Write(voice.Pattern)}")),
        ("loudness", string.Join(' ', exercise.Dynamics)),
    ];

    private static IEnumerable<(string Name, string Value)> Counted(Exercise exercise) =>
    [
        ("phases", string.Join(", ", exercise.Phases.Select(phase => $"{Enum.GetName(phase.Action)!.ToLowerInvariant()} {phase.Counts}"))),
        ("rounds", exercise.Rounds.ToString(CultureInfo.InvariantCulture)),
    ];

    private static string Keys(LadderSpec keys, Exercise exercise)
    {
        string last = exercise.LastTempo is { } tempo ? Words($", {exercise.Tempo.Default.BeatsPerMinute:0.#} to {tempo.BeatsPerMinute:0.#} bpm") : "";
        string most = keys.MostKeys is { } number ? $", {number} keys" : "";
        return Words($"{(keys.Start is { } start ? $"from {start} " : "")}{Shape(keys.Shape)}{most}{last}, for {keys.Limit}, {keys.ReachPercent} % beyond comfortable");
    }

    internal static string Shape(LadderShape shape) => shape switch
    {
        LadderShape.UpAndBack => "up and back",
        LadderShape.Up => "up",
        LadderShape.Down => "down",
        LadderShape.DownAndBack => "down and back",
        _ => "out from the middle",
    };

    private static IEnumerable<(string Name, string Value)> Demands(Exercise exercise)
    {
        if (ExerciseNumbers.Of(exercise) is not { } asks)
        {
            yield break;
        }

        yield return ("range", Words($"{asks.High - asks.Low} semitones, {asks.Low} to {asks.High} from the tonic; top note {asks.TopDegree}{(asks.TopVowel.Length == 0 ? "" : $" on [{asks.TopVowel}]")}; largest leaps {asks.LeapUp} up, {asks.LeapDown} down"));
        yield return ("time", Words($"{asks.NotesPerSecond} notes a second at most, {asks.LongestToneSeconds} s on one tone, {asks.LongestPhraseSeconds} s in one breath"));
        yield return ("vowels", asks.VowelCourse.Count == 0 ? "" : Words($"{string.Join(' ', asks.VowelCourse.Select(height => Words($"{height}")))} (0 closed, 1 open)"));
        yield return ("complexity", Words($"{asks.Complexity}{(asks.Complexity > Complexity.Simple ? "" : " (simple)")}{(asks.Voices == 1 ? "" : $", {asks.Voices} lines at once")}"));
    }

    private static string Words(FormattableString text) => FormattableString.Invariant(text);
}
