using System.Globalization;
using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Exercises;

/// <summary>
/// A sung exercise out of named values, such as a command's options: they are read as the same fields of a file would be. What is not
/// given is as usual.
/// </summary>
public static class OneExercise
{
    private const int FirstFieldLine = 3;
    private const decimal Slower = 0.75m;
    private const decimal Quicker = 1.25m;

    /// <summary>The fields there are, in the order of a file.</summary>
    public static IReadOnlyList<string> Fields { get; } =
        ["id", "title", "stage", "mode", "pattern", "syllables", "tempo", "dynamics", "articulation", "purposes", "instruction", "listen"];

    private static readonly Dictionary<string, string> Usual = new() { ["id"] = "new", ["title"] = "New", ["stage"] = "sung", ["pattern"] = "1", ["tempo"] = "72" };

    /// <param name="given">Values by the names of fields; of lists ("dynamics", "purposes") the words with spaces or commas between.</param>
    /// <param name="known">Exercises whose ids are taken.</param>
    /// <returns>The exercise; or a problem for each value that may not be, with the name of its field in place of a file.</returns>
    public static FileRead<Exercise> Of(IReadOnlyDictionary<string, string> given, IEnumerable<Exercise> known)
    {
        if (given.TryGetValue("stage", out string? stage) && StageData.TryFind(stage, out Stage found) && ExerciseWords.HasPhases(found))
        {
            return new(null, [FileProblem.Whole("stage", StorageTexts.LineIsSung(StageData.Words(found)))]);
        }

        string[] lines = [.. Fields.Where(name => given.ContainsKey(name) || Usual.ContainsKey(name))];
        StringBuilder text = new("format: 1\nexercises:\n");
        foreach (string name in lines)
        {
            text.Append(name == lines[0] ? "  - " : "    ").Append(name).Append(": ").Append(Value(name, given.GetValueOrDefault(name) ?? Usual[name])).Append('\n');
        }

        FileRead<IReadOnlyList<Exercise>> read = ExerciseFile.Read("", Encoding.UTF8.GetBytes(text.ToString()));
        IEnumerable<FileProblem> problems = read.Problems.Select(problem => FileProblem.Whole(Field(problem.Line, lines), problem.Message));
        IEnumerable<FileProblem> taken = known.Any(exercise => given.TryGetValue("id", out string? id) && exercise.Id == id)
            ? [FileProblem.Whole("id", StorageTexts.IdTaken(given["id"]))]
            : [];
        return read.IsGood && !taken.Any() ? new(read.Value[0], []) : new(null, [.. problems, .. taken]);
    }

    private static string Field(int line, string[] lines) => lines[Math.Clamp(line - FirstFieldLine, 0, lines.Length - 1)];

    private static string Value(string name, string value) => name switch
    {
        "tempo" => Tempo(value),
        "dynamics" or "purposes" => YamlLine.List(value.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)),
        _ => YamlLine.Quote(value),
    };

    /// <summary>A quarter slower to a quarter quicker may be led; a text that is no tempo is left for the reader to refuse.</summary>
    private static string Tempo(string value)
    {
        if (!decimal.TryParse(value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal tempo) || !Plans.PlanWords.Tempo.Allow(tempo))
        {
            string bare = value.Length > 0 && value.All(c => char.IsAsciiDigit(c) || c is '.' or '-') ? value : YamlLine.Quote(value);
            return $"{{default: {bare}, from: 20, to: 300}}";
        }

        int from = Math.Max((int)(tempo * Slower), Music.Rhythm.Tempo.SlowestBeatsPerMinute);
        int to = Math.Min((int)Math.Ceiling(tempo * Quicker), Music.Rhythm.Tempo.FastestBeatsPerMinute);
        return string.Create(CultureInfo.InvariantCulture, $"{{default: {value}, from: {from}, to: {to}}}");
    }
}
