using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Choirs;

/// <summary>The choir as its director describes it in choir.yaml.</summary>
public sealed record Choir
{
    public required string Name { get; init; }

    public string Town { get; init; } = "";

    /// <summary>True for the demo: nothing is ever written into its folder.</summary>
    public bool Demo { get; init; }

    /// <summary>Length of the whole rehearsal in minutes; a warm-up takes about an eighth of it (common practice).</summary>
    public int RehearsalMinutes { get; init; } = 120;

    /// <summary>How notes are named on the screen and in marks; files keep scientific names.</summary>
    public NoteNaming Notes { get; init; } = NoteNaming.Scientific;

    /// <summary>At least one, from the highest to the lowest.</summary>
    public required IReadOnlyList<Part> Parts { get; init; }

    public IReadOnlyList<Concert> Concerts { get; init; } = [];

    /// <summary>Kinds of mark that this director added to the usual ones.</summary>
    public IReadOnlyList<MarkKind> OwnMarkKinds { get; init; } = [];

    /// <summary>The choir with the ranges that its parts have now and no others.</summary>
    public Choir WithoutHistory() => this with
    {
        Parts = [.. Parts.Select(part => part with { History = [new(null, part.Range, part.History.Any(entry => entry.IsStart && entry.Range == part.Range))] })],
    };

    /// <summary>The choir with the ranges that its parts have on a day.</summary>
    public Choir AsOf(DateOnly day) => this with { Parts = [.. Parts.Select(part => part.AsOf(day))] };
}
