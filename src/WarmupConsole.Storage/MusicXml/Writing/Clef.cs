using WarmupConsole.Music.Voices;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>The clef a part reads (common practice): treble, treble an octave down for tenors, bass.</summary>
/// <param name="Sign">G or F.</param>
/// <param name="Line">The line it stands on, from the lowest.</param>
/// <param name="OctaveChange">−1 for the tenors' clef.</param>
internal readonly record struct Clef(string Sign, int Line, int OctaveChange)
{
    private const int LowestMiddleOfTreble = 60;
    private const int LowestMiddleOfTenors = 55;

    /// <summary>By the middle of what the part can sing.</summary>
    internal static Clef For(Part part) => ((part.Range.Extreme.Low.Midi + part.Range.Extreme.High.Midi) / 2) switch
    {
        >= LowestMiddleOfTreble => new("G", 2, 0),
        >= LowestMiddleOfTenors => new("G", 2, -1),
        _ => new("F", 4, 0),
    };
}
