using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.TakeAlong;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>An exercise of a plan as it is printed: once, in its first key, with all the keys it is led through.</summary>
/// <param name="Uses">The steps that use it, with their numbers from 0.</param>
internal sealed record ExerciseSheet(IReadOnlyList<(int Index, WarmupStep Step)> Uses)
{
    private static readonly Beats SpokenBar = Beats.FromBeats(4);

    /// <summary>All exercises of a plan in its order; those in which no key fits anybody are left out.</summary>
    internal static IReadOnlyList<ExerciseSheet> Of(Warmup warmup) =>
    [
        .. warmup.Steps.Index().Where(use => use.Item.Ladder.Rungs.Count > 0 || !use.Item.Exercise.IsSung)
            .GroupBy(use => use.Item.Exercise.Id).Select(uses => new ExerciseSheet([.. uses])),
    ];

    internal Exercise Exercise => Step.Exercise;

    /// <summary>The step that uses it first.</summary>
    internal WarmupStep Step => Uses[0].Step;

    /// <summary>The key it is printed in; null for body and breathing.</summary>
    internal Rung? First => Step.Ladder.Rungs.Count > 0 ? Step.Ladder.Rungs[0] : null;

    /// <summary>One repetition; a bar of rest for what is not sung.</summary>
    internal Beats Length => Exercise.Pattern?.Length ?? SpokenBar;

    internal IReadOnlyList<Bar> Bars => Bar.Of(Length);

    /// <summary>Number and title.</summary>
    internal string Title => TakeAlongTexts.Step(Uses[0].Index, Step);

    /// <summary>What else is said above it: how it is done, what to do, and every key of every step that uses it.</summary>
    internal IEnumerable<string> Lines(NoteNaming notes) =>
    [
        .. Exercise.IsSung ? [MusicXmlSheetTexts.Manner(Exercise)] : new[] { TakeAlongTexts.Phases(Step) },
        .. new[] { Exercise.Instruction, Exercise.Caution }.Where(text => text.Length > 0),
        .. Uses.Where(use => use.Step.Ladder.Rungs.Count > 0).Select(use => MusicXmlSheetTexts.Keys(use.Index, TakeAlongTexts.Keys(use.Step.Ladder.Rungs, notes), Uses.Count > 1)),
    ];
}
