using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Exercises;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>A new exercise while it is being given: the values so far, by the names of their fields, and what follows from them.</summary>
/// <param name="Given">As they were typed.</param>
/// <param name="Known">Exercises whose ids are taken.</param>
internal sealed record ExerciseForm(IReadOnlyDictionary<string, string> Given, IReadOnlyList<Exercise> Known)
{
    internal const string Pattern = "pattern";
    internal const string Syllables = "syllables";
    internal const string Tempo = "tempo";
    internal const string Title = "title";
    internal const string Id = "id";
    internal const string Mode = "mode";

    private const string UsualTempo = "72";
    private const int LongestId = 60;

    internal bool Has(string field) => Given.ContainsKey(field);

    /// <summary>With a value more; an empty one is none.</summary>
    internal ExerciseForm With(string field, string value) =>
        value.Length == 0 ? this : this with { Given = new Dictionary<string, string>(Given) { [field] = value } };

    /// <summary>What is wrong with the values so far, each with its field in place of a file.</summary>
    internal IReadOnlyList<FileProblem> Problems => OneExercise.Of(Given, Known).Problems;

    /// <summary>The exercise that the values make so far; null when one of them may not be.</summary>
    internal Exercise? Exercise => OneExercise.Of(Given, Known).Value is { Pattern: { } pattern } read
        ? read with { Pattern = SpelledVowelData.Complete(pattern) }
        : null;

    /// <summary>What a field would be if nothing is said about it; empty when there is nothing to propose.</summary>
    internal string Proposed(string field) => field switch
    {
        Mode => "major",
        Tempo => UsualTempo,
        "articulation" => "legato",
        "dynamics" => "mf",
        "purposes" => Exercise is { } exercise ? string.Join(", ", PurposeRules.Served(exercise).Select(PurposeData.Id)) : "",
        "stage" => Exercise is { } exercise ? StageData.Id(StageProposal.For(exercise)) : "",
        Id => FreeId(),
        _ => "",
    };

    /// <summary>The command that gives these values at once, so that nothing typed is lost.</summary>
    internal string AsCommand() =>
        string.Join(' ', Given.Select(field => $"--{Option(field.Key)} \"{field.Value.Replace("\"", "\\\"", StringComparison.Ordinal)}\"").Prepend("warmup exercises add"));

    /// <summary>The name of the option for a field: "line" for the pattern, else the same.</summary>
    internal static string Option(string field) => field == Pattern ? "line" : field;

    /// <summary>The words of the title, joined; with a number when that is taken.</summary>
    private string FreeId()
    {
        string id = new([.. Given.GetValueOrDefault(Title, "").ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' ')]);
        id = string.Join('-', id.Split(' ', StringSplitOptions.RemoveEmptyEntries));
        id = id.Length == 0 ? "" : id[..Math.Min(id.Length, LongestId - 3)].Trim('-');
        return id.Length == 0 ? "" : Enumerable.Range(1, Known.Count + 1)
            .Select(number => number == 1 ? id : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{id}-{number}"))
            .First(free => Known.All(exercise => exercise.Id != free));
    }
}
