using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Music.Sounding;

/// <summary>Lines in the key of a rung, for the piano and for whatever is written down.</summary>
public static class SungTones
{
    /// <summary>What a part sings in a rung, from beat 0 of the pattern, in its own octave; nothing when it rests.</summary>
    public static IReadOnlyList<SungTone> Of(Exercise exercise, Rung rung, RungPart part)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(part);
        return part.Sings && exercise.PatternFor(part.Part) is { } line ? [.. Of(exercise, line, rung, part.Octaves)] : [];
    }

    /// <summary>A line some octaves away from where it is written.</summary>
    internal static IEnumerable<SungTone> Of(Exercise exercise, Pattern line, Rung rung, int octaves)
    {
        Beats start = Beats.Zero;
        foreach (PatternNote note in line.Notes)
        {
            if (note.Degree is Degree degree)
            {
                Pitch pitch = rung.Tonic.Octaves(octaves).Transpose(ModeData.IntervalOf(rung.Mode, degree));
                Beats length = Sounding(note.Length, exercise.Articulation);
                yield return new(note, pitch, new(Keyboard.OnPiano(pitch.Midi), start, length, VelocityAt(exercise, line, start)));
            }

            start += note.Length;
        }
    }

    /// <summary>The course of loudness reaches its last word on the last sounding note.</summary>
    internal static int VelocityAt(Exercise exercise, Pattern pattern, Beats start)
    {
        int after = pattern.Notes.Reverse().TakeWhile(note => note.Degree is null).Count();
        long last = pattern.Notes.SkipLast(after + 1).Sum(note => note.Length.Ticks);
        return DynamicsData.VelocityAt(exercise.Dynamics, last == 0 ? 0 : (double)start.Ticks / last);
    }

    /// <summary>How long a note sounds: staccato half, marcato three quarters of what is written.</summary>
    private static Beats Sounding(Beats written, Articulation articulation) => articulation switch
    {
        Articulation.Staccato => new(Math.Max(1, written.Ticks / 2)),
        Articulation.Marcato => new(Math.Max(1, written.Ticks * 3 / 4)),
        _ => written,
    };
}
