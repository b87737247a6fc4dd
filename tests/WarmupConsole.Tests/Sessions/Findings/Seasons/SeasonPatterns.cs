using System.Text;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Storage.Exercises;

namespace WarmupConsole.Tests.Sessions.Findings.Seasons;

/// <summary>
/// The exercises of simulated seasons, twice: as semitones and beats for the simulation, which computes with nothing else, and as files
/// for the program.
/// </summary>
internal static class SeasonPatterns
{
    internal static readonly (string Id, string Degrees, int[] Semitones, double Beats, int Bpm, string Vowel)[] Rows =
    [
        ("five-up-down", "1 2 3 4 5 4 3 2 1", [0, 2, 4, 5, 7, 5, 4, 2, 0], 0.5, 80, "noo/u"),
        ("three-up-down", "1 2 3 2 1", [0, 2, 4, 2, 0], 1, 72, "mm/m"),
        ("five-falling", "5 4 3 2 1", [7, 5, 4, 2, 0], 1, 84, "nee/i"),
        ("triad", "1 3 5 3 1", [0, 4, 7, 4, 0], 1, 88, "nah/ɑ"),
        ("octave-arpeggio", "1 3 5 8 5 3 1", [0, 4, 7, 12, 7, 4, 0], 0.75, 92, "yah/ɑ"),
        ("octave-scale", "1 2 3 4 5 6 7 8 7 6 5 4 3 2 1", [0, 2, 4, 5, 7, 9, 11, 12, 11, 9, 7, 5, 4, 2, 0], 0.5, 100, "loo/u"),
        ("broken-thirds", "1 3 2 4 3 5 4 2 1", [0, 4, 2, 5, 4, 7, 5, 2, 0], 0.5, 88, "no/o"),
        ("one-note", "1", [0], 6, 66, "mah/ɑ"),
        ("fifth-slide", "1 5 1", [0, 7, 0], 2, 70, "noo/u"),
        ("six-quick", "1 2 3 4 5 6 5 4 3 2 1", [0, 2, 4, 5, 7, 9, 7, 5, 4, 2, 0], 0.25, 76, "dee/i"),
        ("doubled", "5 5 4 4 3 3 2 2 1", [7, 7, 5, 5, 4, 4, 2, 2, 0], 0.5, 96, "me/ɛ"),
        ("octave-leap", "1 8 5 3 1", [0, 12, 7, 4, 0], 1, 84, "ha/ɑ"),
    ];

    internal static readonly string Yaml = WriteYaml();

    internal static readonly IReadOnlyDictionary<string, Exercise> Exercises =
        ExerciseFile.Read("seasons", Encoding.UTF8.GetBytes(Yaml)).Value!.ToDictionary(exercise => exercise.Id);

    private static string WriteYaml()
    {
        StringBuilder text = new("format: 1\nexercises:\n");
        foreach (var row in Rows)
        {
            string length = row.Beats switch { 0.25 => ":1/4", 0.5 => ":1/2", 0.75 => ":3/4", _ => $":{row.Beats}" };
            string[] degrees = row.Degrees.Split(' ');
            string pattern = string.Join(' ', degrees.Select(degree => degree + length));
            text.Append($"  - id: {row.Id}\n    title: {row.Id}\n    stage: sung\n    pattern: \"{pattern}\"\n");
            text.Append($"    syllables: \"{row.Vowel}{string.Concat(Enumerable.Repeat(" ~", degrees.Length - 1))}\"\n");
            text.Append($"    tempo: {{default: {row.Bpm}, from: 50, to: 140}}\n    dynamics: [mf]\n");
        }

        return text.ToString();
    }
}
