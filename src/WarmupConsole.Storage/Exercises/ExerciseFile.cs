using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Exercises;

/// <summary>Files of exercises in and out, as docs/plan-format.md says.</summary>
public static class ExerciseFile
{
    public static FileRead<IReadOnlyList<Exercise>> Read(string file, ReadOnlySpan<byte> bytes)
    {
        FileRead<MapReader> opened = FormatCheck.Open(file, bytes, ExerciseFields.Exercises);
        if (!opened.IsGood)
        {
            return new(null, opened.Problems);
        }

        MapReader reader = opened.Value;
        Dictionary<string, int> lines = [];
        List<Exercise> exercises = [];
        foreach (MapReader fields in reader.Maps("exercises"))
        {
            exercises.Add(ExerciseReader.Read(fields));
            UniqueCheck.Add(lines, fields, "id", exercises[^1].Id);
        }

        reader.Finish();
        return reader.Problems.Finish<IReadOnlyList<Exercise>>(exercises);
    }

    public static string Write(IEnumerable<Exercise> exercises) => ExerciseWriter.Write(exercises);
}
