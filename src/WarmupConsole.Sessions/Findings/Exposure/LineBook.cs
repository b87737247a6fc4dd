using System.Collections.Concurrent;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>Keeps every line once, however many rungs of however many evenings ask for it. For use by several threads at once.</summary>
public sealed class LineBook
{
    private const int Octave = 12;

    private readonly ConcurrentDictionary<RungAsked, IReadOnlyList<ExposedLine>> rungs = [];
    private readonly ConcurrentDictionary<ExposedLine, ExposedLine> lines = new(ExposedLine.ByContent);

    /// <summary>What each part that sang a rung was asked for; parts whose notes make no sense are passed over.</summary>
    /// <param name="choir">The choir of that evening.</param>
    /// <param name="exercise">The exercise, or null when it is unknown: then only lowest and highest are known.</param>
    /// <param name="id">Its id.</param>
    /// <param name="rung">As the log has it.</param>
    internal IReadOnlyList<ExposedLine> Lines(Choir choir, Exercise? exercise, string id, RungStarted rung)
    {
        RungAsked asked = new(choir, exercise, id, rung);
        return rungs.TryGetValue(asked, out IReadOnlyList<ExposedLine>? known) ? known : rungs.GetOrAdd(asked, [.. Made(asked)]);
    }

    private IEnumerable<ExposedLine> Made(RungAsked asked)
    {
        RungStarted rung = asked.Rung;
        for (int i = 0; i < Math.Min(rung.Sing.Count, Math.Min(rung.Low.Count, rung.High.Count)); i++)
        {
            (int low, int high) = (rung.Low[i], rung.High[i]);
            if (low is >= 0 and <= 127 && high is >= 0 and <= 127 && low <= high)
            {
                string part = rung.Sing[i];
                ExposedLine line = new(part, asked.Id, Pitches(asked.Exercise, asked.Choir.Parts.FirstOrDefault(known => known.Id == part), rung.Midi, (low, high)));
                yield return lines.GetOrAdd(line, line);
            }
        }
    }

    /// <summary>The part's own line, or whichever line of the exercise fits what the log says it sang.</summary>
    private static IReadOnlyList<ExposedPitch> Pitches(Exercise? exercise, Part? part, int tonic, (int Low, int High) span)
    {
        Pattern? own = part is null ? null : exercise?.PatternFor(part);
        foreach (Pattern pattern in (exercise?.Lines ?? []).OrderByDescending(line => line == own))
        {
            IReadOnlyList<ExposedPitch> written = LinePitches.Of(pattern, exercise!, tonic);
            int shift = span.Low - written[0].Midi;
            if (shift % Octave == 0 && written[^1].Midi + shift == span.High)
            {
                return [.. written.Select(pitch => pitch with { Midi = pitch.Midi + shift })];
            }
        }

        return [.. new[] { span.Low, span.High }.Distinct().Select(midi => new ExposedPitch(midi, 0, "", -1))];
    }
}
