using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Exercises;

/// <summary>A line of their own for some parts of an exercise: a drone, a chord tone, a later entry, another direction.</summary>
/// <param name="Parts">Ids of the parts, or of groups, that sing it; in a choir without them nobody does.</param>
/// <param name="Pattern">What they sing, relative to the same tonic, each in its placement.</param>
/// <param name="Offset">Beats that they come in after the others; zero for a line that begins with them.</param>
public sealed record VoiceLine(IReadOnlyList<string> Parts, Pattern Pattern, Beats Offset)
{
    /// <summary>The pattern with a rest before a later entry.</summary>
    public Pattern Placed => Offset == Beats.Zero ? Pattern : new([new(null, Offset, null), .. Pattern.Notes]);

    /// <summary>True when the part, or a group it belongs to, is named.</summary>
    public bool IsFor(Part part) => Parts.Contains(part.Id) || part.Groups.Any(Parts.Contains);
}
