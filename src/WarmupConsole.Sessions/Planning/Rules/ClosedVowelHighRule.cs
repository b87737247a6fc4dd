using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Sessions.Planning.Rules;

/// <summary>
/// No closed vowel on a note above a part's comfortable range: high notes ask for more room in the mouth (common practice). Each part
/// is held to the line that it sings. Hums and trills are no vowels; slides pass through.
/// </summary>
internal sealed class ClosedVowelHighRule : IPlanRule
{
    /// <summary>Closed and nearly closed vowels (i, u, ɪ, ʊ): the first two of seven steps of the vowel chart.</summary>
    private const double ClosedTo = 0.2;

    public string Name => "closed-vowel-high";

    public IEnumerable<PlanRemark> Check(Warmup warmup)
    {
        foreach ((int index, WarmupStep step) in warmup.Steps.Index().Where(step => step.Item.Exercise.Stage == Stage.Sung))
        {
            if (First(warmup, index, step) is var (at, vowel))
            {
                yield return new(PlanSeverity.Hint, Name, index, PlanTexts.ClosedVowelHigh(at, vowel), "keys");
            }
        }
    }

    private static (SungAt At, string Vowel)? First(Warmup warmup, int index, WarmupStep step)
    {
        Dictionary<Pattern, SungLine> lines = [];
        IEnumerable<(SungAt, string)?> found =
            from rung in step.Ladder.Rungs
            from part in rung.Parts
            where part.Sings && part.Span.High.Midi > part.Part.Range.Comfortable.High.Midi
            from note in Line(lines, step.Exercise, part).Notes
            let pitch = Sounding(rung, part, note)
            where pitch.Midi > part.Part.Range.Comfortable.High.Midi && IsClosed(note.Vowel)
            select ((SungAt, string)?)(new SungAt(warmup, index, part.Part, rung.Tonic, pitch), note.Vowel);
        return found.FirstOrDefault();
    }

    private static SungLine Line(Dictionary<Pattern, SungLine> lines, Exercise exercise, RungPart part)
    {
        Pattern pattern = exercise.PatternFor(part.Part)!;
        if (!lines.TryGetValue(pattern, out SungLine? line))
        {
            lines.Add(pattern, line = new(pattern, exercise.Mode));
        }

        return line;
    }

    private static Pitch Sounding(Rung rung, RungPart part, SungNote note) => rung.Tonic.Octaves(part.Octaves).Transpose(note.Interval);

    private static bool IsClosed(string vowel) => !VowelData.IsHalfClosed(vowel) && VowelData.Height(vowel) is <= ClosedTo;
}
