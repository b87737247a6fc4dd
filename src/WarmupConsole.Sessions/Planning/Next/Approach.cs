using System.Collections.Concurrent;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Ladders that come to a pitch or a key of one part from below and from above. From any thread.</summary>
internal sealed class Approach(Choir choir)
{
    private const int Octave = 12;
    private const int KeysBelow = 2;

    /// <summary>Two keys below, the key itself, one above, and back.</summary>
    private const int Keys = KeysBelow + 2;

    /// <summary>Semitones from middle C: an exercise that begins higher or lower meets voices that are not warm there (common practice).</summary>
    private const int FarthestStart = 5;

    private readonly ConcurrentDictionary<(string Exercise, string Part), IReadOnlyList<ExposedPitch>> _lines = [];

    /// <summary>Ladders of four keys around the target, the most modest first; whether a part sings there is seen when they are built.</summary>
    internal IEnumerable<LadderSpec> Around(Exercise exercise, Target target)
    {
        if (choir.Parts.FirstOrDefault(part => part.Id == target.Part) is not { } part || exercise.PatternFor(part) is null)
        {
            return [];
        }

        IEnumerable<LadderSpec> limits = Together.IsNeededFor(exercise) ? [new()] : [new(), new() { Limit = part.Id }, new() { Limit = part.Id, ReachPercent = 100 }];
        return from limit in limits
               from tonic in Tonics(exercise, part, target)
               where Math.Abs(tonic - KeysBelow - Pitch.MiddleC.Midi) <= FarthestStart
               select limit with { Start = KeySpelling.TonicFor(tonic - KeysBelow, exercise.Mode), MostKeys = Keys };
    }

    /// <summary>True when the part sings it right after a lower key and right after a higher one, with the others where it needs them.</summary>
    internal bool ComesFromBothSides(WarmupStep step, Target target)
    {
        int part = PartIndex(target.Part);
        if (part < 0 || !step.Exercise.IsSung || !Together.IsKeptIn(step))
        {
            return false;
        }

        (bool isFromBelow, bool isFromAbove) = (false, false);
        IReadOnlyList<Rung> rungs = step.Ladder.Rungs;
        for (int key = 1; key < rungs.Count; key++)
        {
            int move = rungs[key].Tonic.Midi - rungs[key - 1].Tonic.Midi;
            if (rungs[key - 1].Parts[part].Sings && rungs[key].Parts[part].Sings && Meets(step.Exercise, rungs[key], part, target))
            {
                (isFromBelow, isFromAbove) = (isFromBelow || move > 0, isFromAbove || move < 0);
            }
        }

        return isFromBelow && isFromAbove;
    }

    private bool Meets(Exercise exercise, Rung rung, int partIndex, Target target)
    {
        RungPart part = rung.Parts[partIndex];
        if (target.Pitch is not { } pitch)
        {
            return target.Tonic is { } tonic && (rung.Tonic.Midi - tonic.Midi) % Octave == 0;
        }

        int wanted = pitch.Midi - rung.Tonic.Midi - (Octave * part.Octaves);
        foreach (ExposedPitch sung in Line(exercise, part.Part))
        {
            if (sung.Midi == wanted)
            {
                return (target.Vowel.Length == 0 || sung.Vowel == target.Vowel) && (target.Loudness < 0 || sung.Loudness == target.Loudness);
            }
        }

        return false;
    }

    /// <summary>The pitches of a part's line relative to the tonic.</summary>
    private IReadOnlyList<ExposedPitch> Line(Exercise exercise, Part part) =>
        _lines.GetOrAdd((exercise.Id, part.Id), _ => exercise.PatternFor(part) is { } pattern ? LinePitches.Of(pattern, exercise, 0) : []);

    private int PartIndex(string id)
    {
        for (int index = 0; index < choir.Parts.Count; index++)
        {
            if (choir.Parts[index].Id == id)
            {
                return index;
            }
        }

        return -1;
    }

    /// <summary>The tonic that was heard first, then others that bring the part to the same pitch or key, those near middle C first.</summary>
    private IEnumerable<int> Tonics(Exercise exercise, Part part, Target target)
    {
        IEnumerable<int> heard = target.Tonic is { } tonic ? [tonic.Midi] : [];
        IEnumerable<int> others = target.Pitch is { } pitch
            ? Line(exercise, part).Where(sung => target.Vowel.Length == 0 || sung.Vowel == target.Vowel)
                .Select(sung => pitch.Midi - (Octave * part.PlacementOctaves) - sung.Midi)
                .OrderBy(midi => Math.Abs(midi - KeysBelow - Pitch.MiddleC.Midi)).ThenBy(midi => midi)
            : heard.SelectMany(midi => new[] { midi - Octave, midi + Octave });
        return heard.Concat(others).Distinct();
    }
}
