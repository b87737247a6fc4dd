using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>Keeps every line once, however many rungs ask for it.</summary>
public sealed class LineBook
{
    private const int Octave = 12;
    private readonly Dictionary<(Exercise? Exercise, string Id, string Part, int Tonic, int Low, int High), ExposedLine> lines = [];

    /// <summary>What a part was asked for.</summary>
    /// <param name="exercise">The exercise, or null when it is unknown: then only lowest and highest are known.</param>
    /// <param name="id">Its id.</param>
    /// <param name="part">The part, with its id.</param>
    /// <param name="tonic">MIDI number of the tonic as written.</param>
    /// <param name="span">Lowest and highest MIDI number as the log gives them, each within 0–127.</param>
    internal ExposedLine Line(Exercise? exercise, string id, (string Id, Part? Known) part, int tonic, (int Low, int High) span)
    {
        var key = (exercise, id, part.Id, tonic, span.Low, span.High);
        if (!lines.TryGetValue(key, out ExposedLine? line))
        {
            line = new(part.Id, id, Pitches(exercise, part.Known, tonic, span));
            lines.Add(key, line);
        }

        return line;
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
