using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>Every line of an exercise in parts has a part of the choir that sings it.</summary>
internal sealed class VoiceWithoutPartRule : IPlanRule
{
    public string Name => "voice-without-part";

    public IEnumerable<PlanRemark> Check(Warmup warmup) =>
        from step in warmup.Steps.Index()
        let lost = step.Item.Exercise.Voices.Where(voice => !warmup.Choir.Parts.Any(voice.IsFor)).ToArray()
        where lost.Length > 0
        select new PlanRemark(PlanSeverity.Warning, Name, step.Index, PlanTexts.VoiceWithoutPart(step.Index, step.Item.Exercise, lost.SelectMany((VoiceLine voice) => voice.Parts)));
}
