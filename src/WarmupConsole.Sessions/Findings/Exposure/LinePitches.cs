using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>The different pitches of a pattern in a key, each with its length, vowel and loudness.</summary>
internal static class LinePitches
{
    internal static IReadOnlyList<ExposedPitch> Of(Pattern pattern, Exercise exercise, int tonic) =>
        [.. Notes(pattern, exercise, tonic).GroupBy(note => note.Midi).Select(same => same.MaxBy(note => note.Beats)).OrderBy(note => note.Midi)];

    private static IEnumerable<ExposedPitch> Notes(Pattern pattern, Exercise exercise, int tonic)
    {
        (Beats start, string vowel, Beats length) = (Beats.Zero, "", pattern.Length);
        foreach (PatternNote note in pattern.Notes)
        {
            if (note.Degree is { } degree)
            {
                vowel = note.Syllable?.Vowel ?? vowel;
                int midi = tonic + ModeData.IntervalOf(exercise.Mode, degree).Semitones;
                yield return new(midi, note.Length.ToDouble(), vowel, LoudnessAt(exercise, (double)start.Ticks / length.Ticks));
            }

            start += note.Length;
        }
    }

    /// <summary>The words are spread evenly over the pattern; the nearest one counts.</summary>
    private static int LoudnessAt(Exercise exercise, double position) =>
        DynamicsData.Order(exercise.Dynamics[(int)Math.Round(position * (exercise.Dynamics.Count - 1))]);
}
