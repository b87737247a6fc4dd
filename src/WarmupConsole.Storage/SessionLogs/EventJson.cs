using System.Text.Json.Serialization;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>Generated writers for the fields of each event.</summary>
[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, GenerationMode = JsonSourceGenerationMode.Serialization)]
[JsonSerializable(typeof(AccompanimentChanged))]
[JsonSerializable(typeof(BreathChanged))]
[JsonSerializable(typeof(CutTaken))]
[JsonSerializable(typeof(FollowChanged))]
[JsonSerializable(typeof(HoldChanged))]
[JsonSerializable(typeof(LadderChanged))]
[JsonSerializable(typeof(MarkMade))]
[JsonSerializable(typeof(MarkMoved))]
[JsonSerializable(typeof(MarkUndone))]
[JsonSerializable(typeof(MarkWorded))]
[JsonSerializable(typeof(OctaveChanged))]
[JsonSerializable(typeof(OrderChanged))]
[JsonSerializable(typeof(PartsChosen))]
[JsonSerializable(typeof(RehearsalMarked))]
[JsonSerializable(typeof(RoundStarted))]
[JsonSerializable(typeof(RungEnded))]
[JsonSerializable(typeof(LeadInStarted))]
[JsonSerializable(typeof(RungStarted))]
[JsonSerializable(typeof(RunEnded))]
[JsonSerializable(typeof(RunResumed))]
[JsonSerializable(typeof(RunStarted))]
[JsonSerializable(typeof(StepAdded))]
[JsonSerializable(typeof(StepStarted))]
[JsonSerializable(typeof(StepsOver))]
[JsonSerializable(typeof(TimelineChanged))]
[JsonSerializable(typeof(TonightTold))]
internal sealed partial class EventJson : JsonSerializerContext;
