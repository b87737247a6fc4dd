using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.App.Running;

/// <summary>The line of an exercise alone, as a piano gives it.</summary>
internal static class LineNotes
{
    private const int Velocity = 64;

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
