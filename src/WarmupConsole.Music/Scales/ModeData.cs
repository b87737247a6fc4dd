using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Music.Scales;

/// <summary>One row per mode: its name in files, the semitones of its seven degrees above the tonic, and its key signature against major's.</summary>
public static class ModeData
{
    private static readonly (Mode Mode, string Id, string Words, int[] Semitones, int Fifths)[] Rows =
    [
        (Mode.Major, "major", "major", [0, 2, 4, 5, 7, 9, 11], 0),
        (Mode.Minor, "minor", "minor", [0, 2, 3, 5, 7, 8, 10], -3),
        (Mode.HarmonicMinor, "harmonic-minor", "harmonic minor", [0, 2, 3, 5, 7, 8, 11], -3),
        (Mode.MelodicMinor, "melodic-minor", "melodic minor", [0, 2, 3, 5, 7, 9, 11], -3),
        (Mode.Dorian, "dorian", "dorian", [0, 2, 3, 5, 7, 9, 10], -2),
        (Mode.Phrygian, "phrygian", "phrygian", [0, 1, 3, 5, 7, 8, 10], -4),
        (Mode.Lydian, "lydian", "lydian", [0, 2, 4, 6, 7, 9, 11], 1),
        (Mode.Mixolydian, "mixolydian", "mixolydian", [0, 2, 4, 5, 7, 9, 10], -1),
    ];

    /// <summary>All names as files write them, in the order of the table.</summary>
    public static IReadOnlyList<string> Ids { get; } = [.. Rows.Select(row => row.Id)];

    /// <summary>As files write it: "harmonic-minor".</summary>
    public static string Id(Mode mode) => Rows[(int)mode].Id;

    /// <summary>As it is shown: "harmonic minor".</summary>
    public static string Words(Mode mode) => Rows[(int)mode].Words;

    /// <summary>By its name in files; false when there is no such mode.</summary>
    public static bool TryFind(string id, out Mode mode)
    {
        int row = Array.FindIndex(Rows, r => r.Id == id);
        mode = row < 0 ? default : Rows[row].Mode;
        return row >= 0;
    }

    /// <summary>Semitones from the tonic to a degree of the scale; the number is 1–7.</summary>
    public static int Semitones(Mode mode, int number) => Rows[(int)mode].Semitones[number - 1];

    /// <summary>What the key signature adds to that of the major key on the same tonic, in fifths (flats negative). The minors share one signature.</summary>
    public static int SignatureFifths(Mode mode) => Rows[(int)mode].Fifths;

    /// <summary>From the tonic to a degree, with its spelling: in minor, degree 3 is a minor third.</summary>
    public static Interval IntervalOf(Mode mode, Degree degree) => new(
        degree.Number - 1 + (7 * degree.Octave),
        Semitones(mode, degree.Number) + degree.Alteration + (12 * degree.Octave));
}
