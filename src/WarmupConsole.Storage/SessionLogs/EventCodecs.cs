using System.Text;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>One row per event: its name in logs, and how its fields are read and written.</summary>
internal static class EventCodecs
{
    /// <summary>Commonest first: a line is compared with one name after another.</summary>
    private static readonly Row[] Rows =
    [
        new("rung-started", typeof(RungStarted), EventJson.Default.RungStarted, static (in RecordFields f) => new RungStarted(f.Int("step"u8), f.Int("rung"u8), f.Text("tonic"u8), f.Int("midi"u8), f.Int("milliBpm"u8), f.Texts("sing"u8), f.Ints("low"u8), f.Ints("high"u8))),
        new("rung-ended", typeof(RungEnded), EventJson.Default.RungEnded, static (in RecordFields f) => new RungEnded(f.Int("step"u8), f.Int("rung"u8), f.Yes("whole"u8))),
        new("timeline-changed", typeof(TimelineChanged), EventJson.Default.TimelineChanged, static (in RecordFields f) => new TimelineChanged(f.Int("milliBpm"u8), f.Long("beatTicks"u8), f.Long("nanoseconds"u8))),
        new("mark-made", typeof(MarkMade), EventJson.Default.MarkMade, Made),
        new("lead-in-started", typeof(LeadInStarted), EventJson.Default.LeadInStarted, static (in RecordFields f) => new LeadInStarted(f.Int("step"u8), f.Int("rung"u8))),
        new("step-started", typeof(StepStarted), EventJson.Default.StepStarted, static (in RecordFields f) => new StepStarted(f.Int("step"u8), f.Text("exercise"u8), f.Ints("keys"u8))),
        new("round-started", typeof(RoundStarted), EventJson.Default.RoundStarted, static (in RecordFields f) => new RoundStarted(f.Int("step"u8), f.Int("round"u8))),
        new("hold-changed", typeof(HoldChanged), EventJson.Default.HoldChanged, static (in RecordFields f) => new HoldChanged(f.Text("hold"u8))),
        new("run-started", typeof(RunStarted), EventJson.Default.RunStarted, static (in RecordFields f) => new RunStarted(f.Text("app"u8), f.Text("choir"u8), f.Text("planName"u8), f.Text("choirYaml"u8), f.Text("planYaml"u8), f.Text("exercisesYaml"u8))),
        new("run-resumed", typeof(RunResumed), EventJson.Default.RunResumed, static (in RecordFields f) => new RunResumed(f.Int("step"u8), f.Int("rung"u8))),
        new("run-ended", typeof(RunEnded), EventJson.Default.RunEnded, static (in RecordFields f) => new RunEnded(f.Text("why"u8))),
        new("step-added", typeof(StepAdded), EventJson.Default.StepAdded, static (in RecordFields f) => new StepAdded(f.Int("step"u8), f.Text("exercise"u8), f.Text("exerciseYaml"u8))),
        new("order-changed", typeof(OrderChanged), EventJson.Default.OrderChanged, static (in RecordFields f) => new OrderChanged(f.Ints("steps"u8), f.Text("why"u8))),
        new("cut-taken", typeof(CutTaken), EventJson.Default.CutTaken, static (in RecordFields f) => new CutTaken(f.Int("step"u8), f.Text("exercise"u8), f.Int("keys"u8), f.Int("seconds"u8))),
        new("steps-over", typeof(StepsOver), EventJson.Default.StepsOver, static (in RecordFields f) => new StepsOver(f.Int("step"u8))),
        new("ladder-changed", typeof(LadderChanged), EventJson.Default.LadderChanged, static (in RecordFields f) => new LadderChanged(f.Int("step"u8), f.Int("rung"u8), f.Ints("keys"u8), f.Text("why"u8))),
        new("parts-chosen", typeof(PartsChosen), EventJson.Default.PartsChosen, static (in RecordFields f) => new PartsChosen(f.Int("step"u8), f.Texts("parts"u8))),
        new("follow-changed", typeof(FollowChanged), EventJson.Default.FollowChanged, static (in RecordFields f) => new FollowChanged(f.Yes("follows"u8))),
        new("tonight-told", typeof(TonightTold), EventJson.Default.TonightTold, static (in RecordFields f) => new TonightTold(f.Texts("parts"u8), f.Ints("heads"u8), f.Yeses("colds"u8), f.Yeses("tired"u8), f.Text("energy"u8), f.Text("raw"u8))),
        new("rehearsal-marked", typeof(RehearsalMarked), EventJson.Default.RehearsalMarked, Rehearsed),
        new("octave-changed", typeof(OctaveChanged), EventJson.Default.OctaveChanged, static (in RecordFields f) => new OctaveChanged(f.Int("step"u8), f.Text("part"u8), f.Int("octaves"u8))),
        new("breath-changed", typeof(BreathChanged), EventJson.Default.BreathChanged, static (in RecordFields f) => new BreathChanged(f.Int("step"u8), f.Int("beats"u8))),
        new("accompaniment-changed", typeof(AccompanimentChanged), EventJson.Default.AccompanimentChanged, static (in RecordFields f) => new AccompanimentChanged(f.Int("step"u8), f.Text("style"u8))),
        new("mark-moved", typeof(MarkMoved), EventJson.Default.MarkMoved, static (in RecordFields f) => new MarkMoved(f.Int("id"u8), f.Int("step"u8), f.Int("rung"u8))),
        new("mark-worded", typeof(MarkWorded), EventJson.Default.MarkWorded, Worded),
        new("mark-undone", typeof(MarkUndone), EventJson.Default.MarkUndone, static (in RecordFields f) => new MarkUndone(f.Int("id"u8))),
    ];

    private delegate SessionEvent Reading(in RecordFields fields);

    internal static IReadOnlyList<string> Names { get; } = [.. Rows.Select(row => row.Name)];

    internal static string NameOf(SessionEvent fact) => RowOf(fact).Name;

    /// <summary>The fields of an event, in the order of its declaration.</summary>
    internal static JsonElement FieldsOf(SessionEvent fact) => JsonSerializer.SerializeToElement(fact, RowOf(fact).Fields);

    /// <summary>The event of that name; null when it is not in the table.</summary>
    /// <exception cref="JsonException">Fields are missing or of the wrong type.</exception>
    internal static SessionEvent? Read(ReadOnlySpan<byte> name, in RecordFields fields)
    {
        foreach (Row row in Rows)
        {
            if (name.SequenceEqual(row.Bytes))
            {
                return row.Read(fields);
            }
        }

        return null;
    }

    private static MarkMade Made(in RecordFields f) => new(
        f.Int("id"u8),
        f.Int("step"u8),
        f.Int("rung"u8),
        f.Text("raw"u8),
        f.Texts("parts"u8),
        f.TextOrNull("kind"u8),
        f.TextOrNull("key"u8),
        f.Yes("keyNamed"u8),
        f.IntOrNull("pitch"u8),
        f.Text("place"u8),
        f.Long("nanoseconds"u8),
        f.TextOrEmpty("strength"u8));

    private static RehearsalMarked Rehearsed(in RecordFields f) => new(
        f.Text("raw"u8),
        f.Text("piece"u8),
        f.Text("bars"u8),
        f.Texts("parts"u8),
        f.TextOrNull("kind"u8),
        f.IntOrNull("pitch"u8),
        f.Text("place"u8),
        f.Long("nanoseconds"u8),
        f.TextOrEmpty("strength"u8));

    private static MarkWorded Worded(in RecordFields f) => new(
        f.Int("id"u8),
        f.Text("raw"u8),
        f.Texts("parts"u8),
        f.TextOrNull("kind"u8),
        f.TextOrNull("key"u8),
        f.Yes("keyNamed"u8),
        f.IntOrNull("pitch"u8),
        f.Text("place"u8),
        f.TextOrEmpty("strength"u8));

    private static Row RowOf(SessionEvent fact) => Array.Find(Rows, row => row.Type == fact.GetType())
        ?? throw new ArgumentException($"{fact.GetType().Name} has no row in the table of session-log events.");

    /// <param name="Name">Its type in logs.</param>
    /// <param name="Type">Its type here.</param>
    /// <param name="Fields">Writes it.</param>
    /// <param name="Read">Reads it.</param>
    private sealed record Row(string Name, Type Type, JsonTypeInfo Fields, Reading Read)
    {
        internal byte[] Bytes { get; } = Encoding.UTF8.GetBytes(Name);
    }
}
