using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Music.Sounding;

/// <summary>Beats tapped on the highest key of the piano, where it is hardly a pitch: not every piano has percussion.</summary>
public static class Clicks
{
    /// <summary>Loud enough beside a piano, and no louder whatever the exercise is.</summary>
    private const int Velocity = 44;

    private static readonly Beats Length = Beats.FromFraction(1, 8);

    /// <summary>A tap on each whole beat from beat 0 on.</summary>
    public static IReadOnlyList<ScoreNote> On(Beats length)
    {
        int beats = (int)((length.Ticks + Beats.TicksPerBeat - 1) / Beats.TicksPerBeat);
        return [.. Enumerable.Range(0, beats).Select(beat => new ScoreNote(Keyboard.HighestMidi, Beats.FromBeats(beat), Length, Velocity))];
    }
}
