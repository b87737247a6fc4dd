using System.Globalization;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning.Editing;

/// <summary>Changes a step one notch up or down, within what a plan file allows; at an end it stays.</summary>
public static class StepFields
{
    private const int MostTalk = 600;
    private const int MostRounds = 20;
    private const int MostKeys = 24;
    private const int LongestBreath = 8;
    private const int TempoNotch = 2_000; // thousandths of a beat a minute
    private const int LowestStart = 36;
    private const int HighestStart = 84;

    private static readonly StepField[] Sung = [.. Enum.GetValues<StepField>().Where(field => field != StepField.Rounds)];
    private static readonly StepField[] Counted = [StepField.Tempo, StepField.Rounds, StepField.Talk];

    /// <summary>The fields that mean something for this step.</summary>
    public static IReadOnlyList<StepField> Of(WarmupStep step)
    {
        ArgumentNullException.ThrowIfNull(step);
        return step.Exercise.IsSung ? Sung : Counted;
    }

    /// <summary>The step with one field a notch further; the same where it cannot.</summary>
    public static PlanStep Changed(WarmupStep step, StepField field, int by, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(choir);
        PlanStep plan = step.Plan;
        return field switch
        {
            StepField.Tempo => WithTempo(step, by),
            StepField.Breath => plan with { BreathBeats = Math.Clamp(plan.BreathBeats + by, 1, LongestBreath) },
            StepField.Rounds => plan with { Rounds = Math.Clamp(step.Rounds + by, 1, MostRounds) },
            StepField.Talk => plan with { TalkSeconds = Math.Clamp(step.TalkSeconds + (5 * by), 0, MostTalk) },
            _ => plan with { Keys = Changed(plan.Keys, step, field, by, choir) },
        };
    }

    /// <summary>Its value in words.</summary>
    public static string Words(WarmupStep step, StepField field, Choir choir)
    {
        ArgumentNullException.ThrowIfNull(step);
        ArgumentNullException.ThrowIfNull(choir);
        LadderSpec keys = step.Plan.Keys;
        return field switch
        {
            StepField.Start => keys.Start is { } start ? choir.Notes.Write(start) : "the nearest to middle C",
            StepField.Shape => ShapeWords(keys.Shape),
            StepField.Limit => choir.Parts.FirstOrDefault(part => part.Id == keys.Limit)?.Name ?? (keys.Limit == LadderSpec.AnyPart ? "any part" : keys.Limit),
            StepField.Reach => Number(keys.ReachPercent) + " %",
            StepField.Tolerance => Number(keys.ToleranceSemitones),
            StepField.MostKeys => keys.MostKeys is { } most ? Number(most) : "as many as fit",
            StepField.By => Number(keys.StepSemitones),
            StepField.Octave => keys.TakesOctave ? "yes" : "no",
            StepField.Tempo => step.Tempo.BeatsPerMinute.ToString("0.#", CultureInfo.InvariantCulture) + (step.Plan.LastTempo is { } last ? $" to {last.BeatsPerMinute.ToString("0.#", CultureInfo.InvariantCulture)}" : ""),
            StepField.Breath => Number(step.Plan.BreathBeats),
            StepField.Rounds => Number(step.Rounds),
            _ => Number(step.TalkSeconds) + " s",
        };
    }

    private static string ShapeWords(LadderShape shape) => shape switch
    {
        LadderShape.UpAndBack => "up and back",
        LadderShape.DownAndBack => "down and back",
        LadderShape.OutFromTheMiddle => "out from the middle",
        LadderShape.Up => "up",
        _ => "down",
    };

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>Within what the exercise still serves at; a tempo outside of it moves only towards it.</summary>
    private static PlanStep WithTempo(WarmupStep step, int by)
    {
        int present = step.Tempo.MilliBeatsPerMinute;
        int slowest = Math.Min(present, step.Exercise.Tempo.Slowest.MilliBeatsPerMinute);
        int quickest = Math.Max(present, step.Exercise.Tempo.Quickest.MilliBeatsPerMinute);
        return step.Plan with { Tempo = Tempo.FromMilliBeatsPerMinute(Math.Clamp(present + (by * TempoNotch), slowest, quickest)) };
    }

    private static LadderSpec Changed(LadderSpec keys, WarmupStep step, StepField field, int by, Choir choir) => field switch
    {
        StepField.Start => keys with { Start = NextStart(keys, step, by) },
        StepField.Shape => keys with { Shape = Next(Enum.GetValues<LadderShape>(), keys.Shape, by) },
        StepField.Limit => keys with { Limit = Next(Limits(choir), keys.Limit, by) },
        StepField.Reach => keys with { ReachPercent = Math.Clamp(keys.ReachPercent + (10 * by), 0, 100) },
        StepField.Tolerance => keys with { ToleranceSemitones = Math.Clamp(keys.ToleranceSemitones + by, 0, 12) },
        StepField.By => keys with { StepSemitones = Math.Clamp(keys.StepSemitones + by, 1, 12) },
        StepField.Octave => keys with { TakesOctave = !keys.TakesOctave },
        _ => keys with { MostKeys = NextMost(keys, step, by) },
    };

    private static Pitch NextStart(LadderSpec keys, WarmupStep step, int by)
    {
        Pitch present = keys.Start ?? (step.Ladder.Rungs is [var first, ..] ? first.Tonic : Pitch.MiddleC);
        return KeySpelling.TonicFor(Math.Clamp(present.Midi + by, LowestStart, HighestStart), step.Exercise.Mode);
    }

    /// <summary>From "as many as fit" it goes down from as many as there are; above the most it is as many as fit again.</summary>
    private static int? NextMost(LadderSpec keys, WarmupStep step, int by)
    {
        int present = keys.MostKeys ?? Math.Min(MostKeys, step.Ladder.Rungs.Select(rung => rung.Tonic.Midi).Distinct().Count());
        int next = Math.Max(1, present + by);
        return (keys.MostKeys is null && by > 0) || next > MostKeys ? null : next;
    }

    private static string[] Limits(Choir choir) =>
        [LadderSpec.Everyone, LadderSpec.AnyPart, .. choir.Parts.Select(part => part.Id), .. choir.Parts.SelectMany(part => part.Groups).Distinct().Where(group => group != LadderSpec.Everyone)];

    private static T Next<T>(T[] all, T present, int by) => all[(((Array.IndexOf(all, present) + by) % all.Length) + all.Length) % all.Length];
}
