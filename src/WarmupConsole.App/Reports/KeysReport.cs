using System.Text.Json;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.App.Reports;

/// <summary>Every key of a plan with who sings, as <c>warmup keys --json</c> prints it. Numbers are sounding MIDI numbers.</summary>
internal sealed record KeysReport(IReadOnlyList<KeysReport.StepKeys> Steps)
{
    internal static KeysReport From(Warmup warmup) => new([.. warmup.Steps.Select(Keys)]);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.KeysReport);

    private static StepKeys Keys(WarmupStep step)
    {
        double seconds = step.Tempo.DurationOf(StepTiming.RungBeats(step.Exercise, step.Plan.BreathBeats)).TotalSeconds;
        return new(step.Exercise.Id, [.. step.Ladder.Rungs.Select(rung => Key(rung, seconds))]);
    }

    private static RungKey Key(Rung rung, double seconds) => new(
        rung.Tonic.ToAscii(),
        rung.Tonic.Midi,
        Math.Round(seconds, 3),
        [.. rung.Parts.Select(part => new PartKey(part.Part.Id, part.Sings, part.Span.Low.Midi, part.Span.High.Midi))]);

    internal sealed record StepKeys(string Exercise, IReadOnlyList<RungKey> Rungs);

    internal sealed record RungKey(string Tonic, int Midi, double Seconds, IReadOnlyList<PartKey> Parts);

    internal sealed record PartKey(string Part, bool Sings, int Low, int High);
}
