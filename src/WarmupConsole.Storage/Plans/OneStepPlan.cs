using System.Text;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>A plan of one exercise out of named values, such as a command's options: they are read as the same fields of a file would be.</summary>
public static class OneStepPlan
{
    private const int ExerciseLine = 3;
    private const int FirstKeyLine = 5;

    /// <param name="exercise">Id of the exercise.</param>
    /// <param name="keys">Fields of the step's keys.</param>
    /// <param name="context">Exercises and choir that names must be found in.</param>
    /// <returns>The plan; or a problem for each value that may not be, with the option's name in place of a file.</returns>
    public static FileRead<Plan> Of(string exercise, IReadOnlyList<(string Name, string Value)> keys, PlanContext context)
    {
        StringBuilder text = new($"format: 1\nsteps:\n  - exercise: {Value(exercise)}\n");
        text.Append(keys.Count > 0 ? "    keys:\n" : "");
        foreach ((string name, string value) in keys)
        {
            text.Append("      ").Append(name).Append(": ").Append(Value(TypedNotes.ForFile(context.Choir.Notes, name, value))).Append('\n');
        }

        FileRead<Plan> read = PlanFile.Read("", Encoding.UTF8.GetBytes(text.ToString()), context);
        return read with { Problems = [.. read.Problems.Select(problem => FileProblem.Whole(Option(problem.Line, keys), problem.Message))] };
    }

    /// <summary>Numbers and yes stand bare, all else as a text that reads back as itself.</summary>
    private static string Value(string value) =>
        value == "true" || (value.TrimStart('-') is { Length: > 0 } digits && digits.All(char.IsAsciiDigit)) ? value : YamlLine.Quote(value);

    private static string Option(int line, IReadOnlyList<(string Name, string Value)> keys) =>
        line >= FirstKeyLine && line - FirstKeyLine < keys.Count ? "--" + keys[line - FirstKeyLine].Name : line == ExerciseLine ? "--exercise" : "";
}
