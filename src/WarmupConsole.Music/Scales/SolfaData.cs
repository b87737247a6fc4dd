using System.Collections.Frozen;

namespace WarmupConsole.Music.Scales;

/// <summary>One row per tonic sol-fa syllable: degree number and semitones against the major scale. Do is the tonic in every mode.</summary>
internal static class SolfaData
{
    private static readonly (string Syllable, int Number, int Alteration)[] Rows =
    [
        ("do", 1, 0), ("re", 2, 0), ("mi", 3, 0), ("fa", 4, 0), ("so", 5, 0), ("la", 6, 0), ("ti", 7, 0),
        ("di", 1, 1), ("ri", 2, 1), ("fi", 4, 1), ("si", 5, 1), ("li", 6, 1),
        ("ra", 2, -1), ("me", 3, -1), ("se", 5, -1), ("le", 6, -1), ("te", 7, -1),
        ("sol", 5, 0),
    ];

    private static readonly FrozenDictionary<string, (int Number, int Alteration)> BySyllable =
        Rows.ToFrozenDictionary(row => row.Syllable, row => (row.Number, row.Alteration));

    internal static bool TryFind(string syllable, out (int Number, int Alteration) found) => BySyllable.TryGetValue(syllable, out found);

    /// <summary>The syllable for a number and its semitones against major, or null when sol-fa has none (a flat fourth).</summary>
    internal static string? Find(int number, int alteration)
    {
        int row = Array.FindIndex(Rows, r => r.Number == number && r.Alteration == alteration);
        return row < 0 ? null : Rows[row].Syllable;
    }
}
