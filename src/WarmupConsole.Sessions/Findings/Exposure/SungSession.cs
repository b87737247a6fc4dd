using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>One session log folded into what findings need: what each part sang, and what was marked.</summary>
public sealed record SungSession
{
    /// <summary>Name of the log, for evidence.</summary>
    public required string Name { get; init; }

    /// <summary>Wall time of the first record.</summary>
    public required DateTimeOffset Start { get; init; }

    /// <summary>Every rung that was begun, in order; see <see cref="ExposedRung.IsWhole"/>.</summary>
    public required IReadOnlyList<ExposedRung> Rungs { get; init; }

    /// <summary>Marks with a kind that were not taken back, in the order they were made.</summary>
    public required IReadOnlyList<HeardMark> Marks { get; init; }

    /// <summary>Ids of the exercises led, in order, sung or not.</summary>
    public required IReadOnlyList<string> Exercises { get; init; }

    /// <summary>The steps led, in order, with the time they took.</summary>
    public IReadOnlyList<LedStep> Led { get; init; } = [];

    /// <summary>What the parts weigh that were thin, tired or had colds, by id: above 0 and below 1. The others weigh 1.</summary>
    public IReadOnlyDictionary<string, double> Weights { get; init; } = new Dictionary<string, double>();

    /// <summary>Rungs whose exercise the log does not hold: of them only the lowest and highest notes are known.</summary>
    public int UnknownRungs { get; init; }

    /// <summary>True when wall time ran backwards within the log. Nothing is measured by it.</summary>
    public bool WasClockSetBack { get; init; }

    /// <summary>Folds the records of one log.</summary>
    /// <param name="name">Name of the log.</param>
    /// <param name="records">In the order of the log; at least one.</param>
    /// <param name="choir">The choir of that evening, for its own kinds of mark.</param>
    /// <param name="exercises">The exercises of that evening by id.</param>
    /// <param name="lines">Shared by all logs that are folded together, so that equal lines are kept once.</param>
    /// <exception cref="ArgumentException">There are no records.</exception>
    public static SungSession From(string name, IReadOnlyList<SessionRecord> records, Choir choir, IReadOnlyDictionary<string, Exercise> exercises, LineBook lines)
    {
        ArgumentNullException.ThrowIfNull(records);
        ArgumentNullException.ThrowIfNull(choir);
        ArgumentNullException.ThrowIfNull(exercises);
        ArgumentNullException.ThrowIfNull(lines);
        if (records.Count == 0)
        {
            throw new ArgumentException("The session log holds no records: nothing was sung in it.", nameof(records));
        }

        ExposureFold fold = new(choir, exercises, lines);
        foreach (SessionRecord record in records)
        {
            fold.Add(record);
        }

        return fold.Finish(name, records[0].At);
    }
}
