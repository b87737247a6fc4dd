using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Ladders;

/// <summary>Which keys an exercise fits in for a choir, under what a plan allows; and what a rung in a key looks like.</summary>
internal sealed class KeyFit
{
    /// <summary>Signatures run to seven accidentals; a plan's own spelling beyond that is respelled.</summary>
    private const int MostAccidentals = 7;

    private const int Octave = 12;

    private readonly Mode _mode;
    private readonly PartKeys[] _parts;

    internal KeyFit(Exercise exercise, Pattern pattern, IReadOnlyList<Part> parts, LadderSpec spec, NoteNaming notes)
    {
        (_mode, Spec, Notes) = (exercise.Mode, spec, notes);
        Demands = ExerciseDemands.Of(pattern, exercise.Mode);
        _parts = [.. parts.Select(part => PartKeys.Of(part, exercise.Voices.Count == 0 ? Demands : DemandsOn(exercise, part), spec))];
        Limiting = [.. _parts.Where(keys => Limits(keys.Part))];
        Common = Limiting.Aggregate(new KeyWindow(int.MinValue, int.MaxValue), (window, keys) => window.And(keys.Allowed));
    }

    internal LadderSpec Spec { get; }

    /// <summary>How notes and keys are named in sentences.</summary>
    internal NoteNaming Notes { get; }

    /// <summary>Of the line that everyone sings who has none of their own.</summary>
    internal ExerciseDemands Demands { get; }

    /// <summary>The parts that the limit speaks of; empty when it names none.</summary>
    internal PartKeys[] Limiting { get; }

    /// <summary>The keys that all limiting parts may sing.</summary>
    internal KeyWindow Common { get; }

    internal bool AnyPartWillDo => Spec.Limit == LadderSpec.AnyPart;

    internal bool Fits(int tonic) => AnyPartWillDo
        ? Array.Exists(Limiting, keys => keys.Allowed.Contains(tonic))
        : Limiting.Length > 0 && Common.Contains(tonic);

    /// <summary>The wished tonic, or the nearest that fits; the lower of two as near. Null when none fits.</summary>
    internal int? Nearest(int wished)
    {
        int? best = null;
        foreach (KeyWindow window in AnyPartWillDo ? Limiting.Select(keys => keys.Allowed) : [Common])
        {
            if (window.Count > 0 && Limiting.Length > 0)
            {
                int near = window.Nearest(wished);
                int distance = Math.Abs(near - wished).CompareTo(Math.Abs((best ?? int.MaxValue / 2) - wished));
                best = distance < 0 || (distance == 0 && near < best) ? near : best;
            }
        }

        return best;
    }

    /// <summary>Spelled with the fewest accidentals, except where the plan itself spells its start.</summary>
    internal Pitch Tonic(int midi) =>
        Spec.Start is Pitch start && start.Midi == midi && Math.Abs(Key.Of(start, _mode).Fifths) <= MostAccidentals
            ? start
            : KeySpelling.TonicFor(midi, _mode);

    /// <summary>One repetition in a key: each part sings within its tolerance and rests beyond.</summary>
    internal Rung Rung(int midi) => Rung(midi, static (keys, tonic) => keys.Singing.Contains(tonic));

    /// <summary>One repetition in a key the director asked for: when all would rest, whoever can sing it at all does.</summary>
    internal Rung InsistedRung(int midi) => Rung(midi) is var usual && usual.Parts.Any(part => part.Sings)
        ? usual
        : Rung(midi, static (keys, tonic) => keys.Extreme.Contains(tonic));

    /// <summary>The parts that sing in a rung and rest in another one because they could not sing it at all.</summary>
    internal List<PartKeys> BeyondExtreme(Rung singing, Rung next) =>
        [.. _parts.Where((keys, index) => singing.Parts[index].Sings && !next.Parts[index].Sings && !keys.Extreme.Contains(next.Tonic.Midi))];

    private Rung Rung(int midi, Func<PartKeys, int, bool> sings)
    {
        Pitch tonic = Tonic(midi);
        RungPart[] parts = new RungPart[_parts.Length];
        for (int i = 0; i < parts.Length; i++)
        {
            PartKeys keys = _parts[i];
            bool isIn = sings(keys, midi);
            int shift = isIn || !Spec.TakesOctave ? 0 : Shift(keys, midi);
            parts[i] = new(keys.Part, isIn || shift != 0, keys.Span(tonic, shift)) { OctaveShift = shift };
        }

        return new(tonic, _mode, parts);
    }

    private static ExerciseDemands DemandsOn(Exercise exercise, Part part) => ExerciseDemands.Of(exercise.PatternFor(part)!, exercise.Mode);

    /// <summary>The octave in which a part that is out of its range can sing a key; 0 when neither serves.</summary>
    private static int Shift(PartKeys keys, int midi)
    {
        int shift = midi > keys.Singing.High ? -1 : 1;
        return keys.Singing.Contains(midi + (Octave * shift)) ? shift : 0;
    }

    private bool Limits(Part part) =>
        Spec.Limit is LadderSpec.Everyone or LadderSpec.AnyPart || part.Id == Spec.Limit || part.Groups.Contains(Spec.Limit);
}
