using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.App.Running;

/// <summary>What is sung in an exercise and nothing else, as a piano gives it.</summary>
internal static class LineNotes
{
    private const int Velocity = 64;

    /// <summary>In a key of a ladder. Where parts have lines of their own, all of them, each in its octave, and nobody rests: that is what is to be heard.</summary>
    internal static IReadOnlyList<ScoreNote> Of(Exercise exercise, Rung rung) => exercise.Voices.Count == 0
        ? Of(exercise, rung.Tonic)
        : Accompaniment.For(exercise, rung with { Parts = [.. rung.Parts.Select(part => part with { Sings = true })] }, PianoPart.Usual with { Style = AccompanimentStyle.Melody });

    internal static List<ScoreNote> Of(Exercise exercise, Pitch tonic)
    {
        List<ScoreNote> score = [];
        Beats start = Beats.Zero;
        foreach (PatternNote note in exercise.Pattern!.Notes)
        {
            if (note.Degree is { } degree)
            {
                score.Add(new(tonic.Transpose(ModeData.IntervalOf(exercise.Mode, degree)).Midi, start, note.Length, Velocity));
            }

            start += note.Length;
        }

        return score;
    }
}
