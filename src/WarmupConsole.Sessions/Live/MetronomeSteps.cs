using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Live;

/// <summary>
/// The marks of a clockwork metronome: 40–60 by 2, 60–72 by 3, 72–120 by 4, 120–144 by 6, 144–208 by 8 (from memory; common on
/// the dials). Below and above them the scale is carried on by 2 and by 8 to the slowest and the quickest tempo.
/// </summary>
public static class MetronomeSteps
{
    private static readonly (int Upwards, int By)[] Scale = [(Tempo.SlowestBeatsPerMinute, 2), (60, 3), (72, 4), (120, 6), (144, 8)];

    private static readonly Tempo[] Marks = [.. AllMarks()];

    /// <summary>The next mark above, or null at the quickest.</summary>
    public static Tempo? Faster(Tempo tempo) => Marks.Where(mark => mark > tempo).Select(mark => (Tempo?)mark).FirstOrDefault();

    /// <summary>The next mark below, or null at the slowest.</summary>
    public static Tempo? Slower(Tempo tempo) => Marks.Where(mark => mark < tempo).Select(mark => (Tempo?)mark).LastOrDefault();

    private static IEnumerable<Tempo> AllMarks()
    {
        for (int mark = Tempo.SlowestBeatsPerMinute; mark < Tempo.FastestBeatsPerMinute; mark += Scale.Last(row => row.Upwards <= mark).By)
        {
            yield return Tempo.FromBeatsPerMinute(mark);
        }

        yield return Tempo.FromBeatsPerMinute(Tempo.FastestBeatsPerMinute);
    }
}
