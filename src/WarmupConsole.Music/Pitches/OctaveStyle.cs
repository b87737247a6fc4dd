namespace WarmupConsole.Music.Pitches;

/// <summary>How octaves are told apart.</summary>
internal enum OctaveStyle
{
    /// <summary>By a number that changes at C: C4 is middle C.</summary>
    Number,

    /// <summary>By large and small letters with commas and primes: C, C c c' c''.</summary>
    Primes,

    /// <summary>By large and small letters with numbers: C1 C c c1 c2.</summary>
    LineNumbers,
}
