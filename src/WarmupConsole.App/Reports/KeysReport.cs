using System.Text.Json;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.App.Reports;

/// <summary>Every key of a plan with who sings, as <c>warmup keys --json</c> prints it. Numbers are sounding MIDI numbers.</summary>
internal sealed record KeysReport(IReadOnlyList<KeysReport.StepKeys> Steps)
{
    internal static KeysReport From(Warmup warmup) => new([.. warmup.Steps.Select(Keys)]);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.KeysReport);

    private static StepKeys Keys(WarmupStep step)
    {
        Beats beats = StepTiming.RungBeats(step.Exercise, step.Plan.BreathBeats);
        return new(
            step.Exercise.Id,
            [.. step.Ladder.Rungs.Select((rung, index) => Key(rung, step.Tempos.At(index).DurationOf(beats).TotalSeconds))],
            step.Ladder.Reasons,
            [.. step.Ladder.Announcements.Select(said => new Announcement(said.Rung + 1, said.Sentence))],
            step.Ladder.Offer is { } offer ? [Of(offer.Lower), Of(offer.Higher)] : null);
    }

    private static RungKey Key(Rung rung, double seconds) => new(
        rung.Tonic.ToAscii(),
        rung.Tonic.Midi,
        Math.Round(seconds, 3),
        [.. rung.Parts.Select(part => new PartKey(part.Part.Id, part.Sings, part.Span.Low.Midi, part.Span.High.Midi, part.OctaveShift))]);

    private static HalfChoir Of(LadderHalf half) =>
        new([.. half.Parts.Select(part => part.Id)], half.Start.ToAscii(), half.Lowest.ToAscii(), half.Highest.ToAscii());

    /// <param name="Exercise">Id of the exercise.</param>
    /// <param name="Rungs">In the order they are sung.</param>
    /// <param name="Reasons">Why the ladder starts and stops where it does.</param>
    /// <param name="Announcements">Who enters and leaves, told one rung ahead.</param>
    /// <param name="TwoLadders">The lower and the higher voices, where few keys fit everyone; else null.</param>
    internal sealed record StepKeys(
        string Exercise,
        IReadOnlyList<RungKey> Rungs,
        IReadOnlyList<string> Reasons,
        IReadOnlyList<Announcement> Announcements,
        IReadOnlyList<HalfChoir>? TwoLadders);

    internal sealed record RungKey(string Tonic, int Midi, double Seconds, IReadOnlyList<PartKey> Parts);

    internal sealed record PartKey(string Part, bool Sings, int Low, int High, int OctaveShift);

    /// <param name="Rung">From 1: in which it is said.</param>
    /// <param name="Sentence">What is said.</param>
    internal sealed record Announcement(int Rung, string Sentence);

    internal sealed record HalfChoir(IReadOnlyList<string> Parts, string Start, string Lowest, string Highest);
}
