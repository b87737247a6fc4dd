using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Ladders that come to a pitch or a key of one part from below and from above: a pitch that sags is approached, not avoided.</summary>
internal static class Approach
{
    private const int Octave = 12;
    private const int KeysBelow = 2;

    /// <summary>Two keys below, the key itself, one above, and back.</summary>
    private const int Keys = KeysBelow + 2;

    private const int MostKeys = 24;

    /// <summary>Semitones from middle C: an exercise that begins higher or lower meets voices that are not warm there (common practice).</summary>
    private const int FarthestStart = 5;

    /// <summary>The step with ladders around the need, the most modest first; only those that do reach it from both sides.</summary>
    internal static IEnumerable<PlanStep> Shape(Draft draft, PlanStep step, Need need)
    {
        Exercise exercise = draft.Exercises[step.ExerciseId];
        Part? part = draft.Choir.Parts.FirstOrDefault(part => part.Id == need.Part);
        if (part is null || exercise.PatternFor(part) is not { } pattern)
        {
            return [];
        }

        return from keys in Together.IsNeededFor(exercise) ? [step.Keys] : Limits(step.Keys, need.Part)
               from tonic in Tonics(need, part, pattern, exercise.Mode)
               where Math.Abs(tonic - KeysBelow - Pitch.MiddleC.Midi) <= FarthestStart
               let start = KeySpelling.TonicFor(tonic - KeysBelow, exercise.Mode)
               let shaped = step with { Keys = keys with { Start = start, Shape = LadderShape.UpAndBack, StepSemitones = 1, MostKeys = Keys } }
               where ComesFromBothSides(draft.Ready(shaped), need)
               select shaped;
    }

    /// <summary>The step as it is when its ladder reaches the need already, else with up to a few keys more at the turning point.</summary>
    internal static IEnumerable<PlanStep> Stretch(Draft draft, PlanStep step, Need need) =>
        from more in Enumerable.Range(0, Keys)
        let stretched = step with { Keys = step.Keys with { MostKeys = Math.Min(MostKeys, (step.Keys.MostKeys ?? Keys) + more) } }
        where ComesFromBothSides(draft.Ready(stretched), need)
        select stretched;

    /// <summary>True when the part sings it right after a lower key and right after a higher one, with the others where it needs them.</summary>
    internal static bool ComesFromBothSides(WarmupStep step, Need need)
    {
        if (!Together.IsKeptIn(step))
        {
            return false;
        }

        IEnumerable<(Rung Before, Rung Rung)> steps = step.Ladder.Rungs.Zip(step.Ladder.Rungs.Skip(1))
            .Where(pair => Sings(pair.First, need.Part) && Meets(step.Exercise, pair.Second, need));
        int[] moves = [.. steps.Select(pair => pair.Rung.Tonic.Midi - pair.Before.Tonic.Midi)];
        return moves.Any(move => move > 0) && moves.Any(move => move < 0);
    }

    private static bool Sings(Rung rung, string part) => rung.Parts.Any(sung => sung.Part.Id == part && sung.Sings);

    private static bool Meets(Exercise exercise, Rung rung, Need need) => Sings(rung, need.Part) && (need.Pitch is { } pitch
        ? exercise.PatternFor(PartIn(rung, need.Part))!.Notes.Any(note => note.Degree is { } degree
            && PitchOf(rung, need.Part, ModeData.IntervalOf(exercise.Mode, degree)) == pitch.Midi)
        : need.Tonic is { } tonic && (rung.Tonic.Midi - tonic.Midi) % Octave == 0);

    private static int PitchOf(Rung rung, string part, Interval interval) =>
        rung.Tonic.Midi + interval.Semitones + (Octave * RungPartIn(rung, part).Octaves);

    private static Part PartIn(Rung rung, string part) => RungPartIn(rung, part).Part;

    private static RungPart RungPartIn(Rung rung, string part) => rung.Parts.First(sung => sung.Part.Id == part);

    private static IEnumerable<LadderSpec> Limits(LadderSpec old, string part) =>
        [old, old with { Limit = part }, old with { Limit = part, ReachPercent = Math.Max(old.ReachPercent, 50) }, old with { Limit = part, ReachPercent = 100 }];

    /// <summary>The tonic that was heard first, then others that bring the part to the same pitch or key.</summary>
    private static IEnumerable<int> Tonics(Need need, Part part, Pattern pattern, Mode mode)
    {
        IEnumerable<int> heard = need.Tonic is { } tonic ? [tonic.Midi] : [];
        IEnumerable<int> others = need.Pitch is { } pitch
            ? pattern.Notes.Where(note => note.Degree is not null)
                .Select(note => pitch.Midi - (Octave * part.PlacementOctaves) - ModeData.IntervalOf(mode, note.Degree!.Value).Semitones)
            : heard.SelectMany(midi => new[] { midi - Octave, midi + Octave });
        return heard.Concat(others).Distinct();
    }
}
