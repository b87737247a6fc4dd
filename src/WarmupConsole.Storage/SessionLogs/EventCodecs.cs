using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>One row per event: its name in logs, and how its fields are read and written.</summary>
internal static class EventCodecs
{
    private static readonly (string Name, Type Type, JsonTypeInfo Fields)[] Rows =
    [
        ("run-started", typeof(RunStarted), EventJson.Default.RunStarted),
        ("run-resumed", typeof(RunResumed), EventJson.Default.RunResumed),
        ("step-started", typeof(StepStarted), EventJson.Default.StepStarted),
        ("step-added", typeof(StepAdded), EventJson.Default.StepAdded),
        ("order-changed", typeof(OrderChanged), EventJson.Default.OrderChanged),
        ("cut-taken", typeof(CutTaken), EventJson.Default.CutTaken),
        ("steps-over", typeof(StepsOver), EventJson.Default.StepsOver),
        ("ladder-changed", typeof(LadderChanged), EventJson.Default.LadderChanged),
        ("parts-chosen", typeof(PartsChosen), EventJson.Default.PartsChosen),
        ("octave-changed", typeof(OctaveChanged), EventJson.Default.OctaveChanged),
        ("breath-changed", typeof(BreathChanged), EventJson.Default.BreathChanged),
        ("follow-changed", typeof(FollowChanged), EventJson.Default.FollowChanged),
        ("lead-in-started", typeof(LeadInStarted), EventJson.Default.LeadInStarted),
        ("rung-started", typeof(RungStarted), EventJson.Default.RungStarted),
        ("rung-ended", typeof(RungEnded), EventJson.Default.RungEnded),
        ("round-started", typeof(RoundStarted), EventJson.Default.RoundStarted),
        ("timeline-changed", typeof(TimelineChanged), EventJson.Default.TimelineChanged),
        ("hold-changed", typeof(HoldChanged), EventJson.Default.HoldChanged),
        ("mark-made", typeof(MarkMade), EventJson.Default.MarkMade),
        ("mark-moved", typeof(MarkMoved), EventJson.Default.MarkMoved),
        ("mark-worded", typeof(MarkWorded), EventJson.Default.MarkWorded),
        ("mark-undone", typeof(MarkUndone), EventJson.Default.MarkUndone),
        ("tonight-told", typeof(TonightTold), EventJson.Default.TonightTold),
        ("rehearsal-marked", typeof(RehearsalMarked), EventJson.Default.RehearsalMarked),
        ("run-ended", typeof(RunEnded), EventJson.Default.RunEnded),
    ];

    internal static IReadOnlyList<string> Names { get; } = [.. Rows.Select(row => row.Name)];

    internal static string NameOf(SessionEvent fact) => RowOf(fact).Name;

    /// <summary>The fields of an event, in the order of its declaration.</summary>
    internal static JsonElement FieldsOf(SessionEvent fact) => JsonSerializer.SerializeToElement(fact, RowOf(fact).Fields);

    /// <summary>The event that a line holds; null when the name is not in the table.</summary>
    /// <exception cref="JsonException">Fields are missing or of the wrong type.</exception>
    internal static SessionEvent? Read(string name, ReadOnlySpan<byte> line)
    {
        foreach ((string known, _, JsonTypeInfo fields) in Rows)
        {
            if (known == name)
            {
                return (SessionEvent?)JsonSerializer.Deserialize(line, fields);
            }
        }

        return null;
    }

    private static (string Name, Type Type, JsonTypeInfo Fields) RowOf(SessionEvent fact) =>
        Array.Find(Rows, row => row.Type == fact.GetType()) is { Fields: not null } row
            ? row
            : throw new ArgumentException($"{fact.GetType().Name} has no row in the table of session-log events.");
}
