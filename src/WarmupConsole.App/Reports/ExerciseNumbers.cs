using WarmupConsole.Music.Exercises;

namespace WarmupConsole.App.Reports;

/// <summary>What a sung exercise asks of the voice, in numbers, at its usual tempo.</summary>
/// <param name="Low">Semitones from the tonic to the lowest note.</param>
/// <param name="High">Semitones from the tonic to the highest note.</param>
/// <param name="LargestLeap">Semitones.</param>
/// <param name="NotesPerSecond">Sounding notes over the whole length.</param>
/// <param name="LongestPhraseSeconds">What one breath must carry.</param>
/// <param name="TopVowel">IPA of what is sung on the highest note; empty when unknown.</param>
internal sealed record ExerciseNumbers(int Low, int High, int LargestLeap, double NotesPerSecond, double LongestPhraseSeconds, string TopVowel)
{
    /// <summary>Null for body and breathing.</summary>
    internal static ExerciseNumbers? Of(Exercise exercise)
    {
        if (exercise.Pattern is not { } pattern)
        {
            return null;
        }

        ExerciseDemands demands = ExerciseDemands.Of(pattern, exercise.Mode);
        double seconds = exercise.Tempo.Default.DurationOf(pattern.Length).TotalSeconds;
        return new(
            demands.Low.Semitones,
            demands.High.Semitones,
            demands.LargestLeapSemitones,
            Math.Round(pattern.Notes.Count(note => note.Degree is not null) / seconds, 2),
            Math.Round(exercise.Tempo.Default.DurationOf(demands.LongestPhrase).TotalSeconds, 1),
            demands.TopVowel);
    }
}
