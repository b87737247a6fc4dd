using CsCheck;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Tests.Sessions.Marks;

namespace WarmupConsole.Tests.Sessions.Planning;

/// <summary>Whatever was found, whoever sings, however long: the laws of a proposal.</summary>
public sealed class NextPlanLawTests
{
    private const int Tries = 12;

    private static readonly string[] Kinds = ["flat", "strained", "late"];
    private static readonly string[] Parts = ["soprano", "alto", "tenor", "bass"];

    [Fact]
    public void Every_proposal_passes_the_check_keeps_the_minutes_and_says_why_each_step_is_there() => AnyEvening.Sample(
        input =>
        {
            NextPlanResult next = NextPlan.From(input);
            Warmup ready = Evenings.Ready(input, next.Plan);
            Assert.DoesNotContain(PlanCheck.Check(ready, [.. input.Earlier, input.Last!]).Open, remark => remark.Severity >= PlanSeverity.Warning);
            Assert.DoesNotContain(PlanCheck.Check(ready).Select(remark => remark.Rule), rule => rule is "stage-order" or "closed-vowel-high" or "entries-and-exits");
            Assert.InRange((ready.Planned - TimeSpan.FromMinutes(input.Minutes!.Value)).TotalSeconds, -15, 15);
            Assert.All(next.Plan.Steps, step => Assert.NotEmpty(step.Because));
            HashSet<string> known = [.. input.Earlier.Append(input.Last!).SelectMany(plan => plan.Steps).Select(step => step.ExerciseId)];
            Assert.True(next.Plan.Steps.Count(step => !known.Contains(step.ExerciseId)) <= 1);
            Assert.Equal(next.Plan.Steps.Count, next.Plan.Steps.DistinctBy(step => step.ExerciseId).Count());
            Assert.All(input.Findings, finding => Assert.True(next.Unmet.Any(sentence => sentence.StartsWith(FindingText.Title(finding, input.Choir), StringComparison.Ordinal))
                || ready.Steps.Any(step => Approaches.Pitch(step, finding.Part, finding.Pitch.Midi))));
            Assert.Equal(next.Differences, NextPlan.From(input).Differences);
        },
        iter: Tries);

    private static readonly Gen<NextPlanInput> AnyEvening =
        from findings in Gen.Select(Gen.Int[0, 3], Gen.Int[0, 2], Gen.Int[0, 11]).List[0, 3]
        from minutes in Gen.Int[10, 30]
        from weeks in Gen.Int[0, 20]
        from shift in Gen.Int[-3, 2]
        from low in Gen.Bool
        from count in Gen.Int[1, 4]
        select Evenings.Usual with
        {
            Choir = SampleChoir.Four with
            {
                Parts = [.. SampleChoir.Four.Parts.Take(count).Select(part => part with { Range = Moved(part.Range, shift) })],
                Concerts = [new Concert(Evenings.NextWeek.AddDays(7 * weeks), "Spring concert")],
            },
            Minutes = minutes,
            Tonight = low ? new() { Energy = Energy.Low } : Tonight.AsUsual,
            Findings = [.. findings.Where(one => one.Item1 < count).DistinctBy(one => one.Item1).Select(one => Finding(one, shift))],
        };

    private static Finding Finding((int Part, int Kind, int Semitone) one, int shift)
    {
        PitchRange range = Moved(SampleChoir.Four.Parts[one.Part].Range, shift).Comfortable;
        Pitch pitch = Music(range.Low.Midi + (one.Semitone % (range.Semitones + 1)));
        return Evenings.Finding(Parts[one.Part], Kinds[one.Kind], pitch.ToAscii());
    }

    private static VoiceRange Moved(VoiceRange range, int semitones) => new(Moved(range.Extreme, semitones), Moved(range.Comfortable, semitones));

    private static PitchRange Moved(PitchRange range, int semitones) => new(Music(range.Low.Midi + semitones), Music(range.High.Midi + semitones));

    private static Pitch Music(int midi) => WarmupConsole.Music.Scales.KeySpelling.TonicFor(midi, WarmupConsole.Music.Scales.Mode.Major);
}
