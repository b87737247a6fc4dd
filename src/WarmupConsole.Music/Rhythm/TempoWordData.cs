namespace WarmupConsole.Music.Rhythm;

/// <summary>
/// One row per tempo word and the band in which metronomes show it, in beats a minute. Books differ by a band or more (common
/// practice): the words say to a musician about how quick it is, and no rule rests on them.
/// </summary>
public static class TempoWordData
{
    private static readonly (int Upwards, string Word)[] Rows =
    [
        (0, "largo"),
        (60, "larghetto"),
        (66, "adagio"),
        (76, "andante"),
        (108, "moderato"),
        (120, "allegro"),
        (168, "presto"),
        (201, "prestissimo"),
    ];

    /// <summary>"andante" for 88; of two bands that meet in a tempo, the quicker one.</summary>
    public static string Word(Tempo tempo) => Rows.Last(row => row.Upwards * 1000 <= tempo.MilliBeatsPerMinute).Word;
}
