using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.Midi.Ports;

/// <summary>A quiet scale and a chord, to hear whether a port leads to the right instrument.</summary>
public static class PortTest
{
    /// <summary>Low, since nobody knows how loud the other end is set.</summary>
    public const int Velocity = 36;

    private const int MiddleC = 60;
    private static readonly int[] MajorScale = [0, 2, 4, 5, 7, 9, 11, 12];
    private static readonly int[] MajorChord = [0, 4, 7, 12];

    public static Tempo Tempo => Tempo.FromBeatsPerMinute(120);

    /// <summary>From beat 0: a C major scale upwards, a beat each, and its chord for two beats.</summary>
    public static IReadOnlyList<ScoreNote> Notes() =>
    [
        .. MajorScale.Select((semitones, beat) => new ScoreNote(MiddleC + semitones, Beats.FromBeats(beat), Beats.FromBeats(1), Velocity)),
        .. MajorChord.Select(semitones => new ScoreNote(MiddleC + semitones, Beats.FromBeats(MajorScale.Length), Beats.FromBeats(2), Velocity)),
    ];
}
