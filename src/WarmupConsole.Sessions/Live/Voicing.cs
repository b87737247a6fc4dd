using System.Globalization;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Live;

/// <summary>Who sings a step, and in which octave, where the director changed it live. Empty as the plan has it.</summary>
/// <param name="Only">Ids of the parts that sing; empty for everyone.</param>
/// <param name="Octaves">Octaves away from their placement, for the parts whose octave was swapped.</param>
public sealed record Voicing(IReadOnlyList<string> Only, IReadOnlyDictionary<string, int> Octaves)
{
    /// <summary>As planned.</summary>
    public static Voicing AsPlanned { get; } = new([], new Dictionary<string, int>());

    /// <summary>A part is among those chosen.</summary>
    public bool Includes(string partId) => Only.Count == 0 || Only.Contains(partId);

    /// <summary>The same with a part in another octave; 0 is its placement again.</summary>
    public Voicing With(string partId, int octaves)
    {
        Dictionary<string, int> changed = new(Octaves);
        changed.Remove(partId);
        if (octaves != 0)
        {
            changed.Add(partId, octaves);
        }

        return this with { Octaves = changed };
    }

    /// <summary>A rung as planned, with who sings it now. Nobody is asked beyond their extreme range.</summary>
    public Rung Of(Rung planned) => planned with { Parts = [.. planned.Parts.Select(Of)] };

    private RungPart Of(RungPart planned)
    {
        RungPart part = Octaves.TryGetValue(planned.Part.Id, out int octaves) ? Shifted(planned, octaves) : planned;
        return Includes(part.Part.Id) ? part : part with { Sings = false };
    }

    /// <summary>The part in that octave; it sings there as long as it can at all.</summary>
    public static RungPart Shifted(RungPart planned, int octaves)
    {
        int by = octaves - planned.OctaveShift;
        PitchRange span = new(planned.Span.Low.Octaves(by), planned.Span.High.Octaves(by));
        return planned with { OctaveShift = octaves, Span = span, Sings = planned.Part.Range.Extreme.Contains(span) };
    }

    /// <summary>By what it says, not by which lists hold it.</summary>
    public bool Equals(Voicing? other) => other is not null && ToString() == other.ToString();

    /// <inheritdoc/>
    public override int GetHashCode() => ToString().GetHashCode(StringComparison.Ordinal);

    /// <summary>"alto bass; bass -1".</summary>
    public override string ToString() => string.Join(' ', Only) + "; "
        + string.Join(' ', Octaves.OrderBy(part => part.Key, StringComparer.Ordinal).Select(part => string.Create(CultureInfo.InvariantCulture, $"{part.Key} {part.Value}")));
}
