using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Next;
using WarmupConsole.Tests.Sessions.Marks;
using WarmupConsole.Tests.Sessions.Planning.Choosing;

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
                || ready.Steps.Any(step => finding.Kind == "strained" ? step.Plan.Answers.Contains(finding.Id) : Approaches.Pitch(step, finding.Part, finding.Pitch.Midi))));
            Assert.All(input.Findings.Where(finding => finding.Kind == "strained"), finding => Assert.True(IsSpared(finding, ready) || next.Unmet.Any(sentence => sentence.Contains("no plan of these minutes spares", StringComparison.Ordinal))));
            Assert.Equal(next.Differences, NextPlan.From(input).Differences);
        },
        iter: Tries);

    /// <summary>Of a small collection the minutes may not be to be had, but never a plan that is wrong.</summary>
    [Fact]
    public void Out_of_any_part_of_the_catalogue_comes_a_plan_without_errors() => Assert.All(Enumerable.Range(1, 16), seed =>
    {
        SeededNumbers numbers = new(seed);
        NextPlanInput input = Evenings.Usual with
        {
            Choir = SampleChoir.Four with { Parts = [.. SampleChoir.Four.Parts.Skip(numbers.From(0, 1)).Take(numbers.From(1, 3))] },
            Exercises = PartOfTheCatalogue(numbers),
            Minutes = numbers.From(10, 30),
        };
        NextPlanResult next = NextPlan.From(input);
        Assert.NotEmpty(next.Plan.Steps);
        Assert.DoesNotContain(PlanCheck.Check(Evenings.Ready(input, next.Plan), [.. input.Earlier, input.Last!]).Open, remark => remark.Severity == PlanSeverity.Error);
    });

    /// <summary>Some of every stage: what comes first and last cannot be left to chance.</summary>
    private static Dictionary<string, Exercise> PartOfTheCatalogue(SeededNumbers numbers) => Evenings.Catalogue.Values
        .OrderBy(exercise => exercise.Id, StringComparer.Ordinal).GroupBy(exercise => exercise.Stage)
        .SelectMany(stage => stage.OrderBy(_ => numbers.From(0, 1_000_000)).Take(numbers.From(1, stage.Key == Stage.Sung ? 30 : 4)))
        .ToDictionary(exercise => exercise.Id);

    /// <summary>Nothing beyond what is easy; and of a pitch in the highest quarter of that, a whole tone clear.</summary>
    private static bool IsSpared(Finding finding, Warmup ready)
    {
        PitchRange easy = ready.Choir.Parts.First(part => part.Id == finding.Part).Range.Comfortable;
        int top = finding.Pitch.Midi >= easy.High.Midi - (easy.Semitones / 4) ? Math.Min(easy.High.Midi, finding.Pitch.Midi - 2) : easy.High.Midi;
        return ready.Steps.SelectMany(step => step.Ladder.Rungs).SelectMany(rung => rung.Parts).Where(part => part.Sings && part.Part.Id == finding.Part).All(part => part.Span.High.Midi <= top);
    }

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
