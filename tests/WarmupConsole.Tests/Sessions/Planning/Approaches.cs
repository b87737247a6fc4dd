using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tests.Sessions.Planning;

/// <summary>Whether a ladder comes to a pitch from both sides, reckoned otherwise than the planner does: from the part's lowest note.</summary>
internal static class Approaches
{
    internal static bool Pitch(WarmupStep step, string part, int midi, string? vowel = null)
    {
        int[] moves =
        [
            .. from pair in step.Ladder.Rungs.Zip(step.Ladder.Rungs.Skip(1))
               where Sung(pair.First, part) is not null && Sung(pair.Second, part) is { } sung && Notes(step.Exercise, sung).Contains((midi, vowel))
               select Math.Sign(pair.Second.Tonic.Midi - pair.First.Tonic.Midi),
        ];
        return moves.Contains(1) && moves.Contains(-1);
    }

    private static RungPart? Sung(Rung rung, string part) => rung.Parts.FirstOrDefault(sung => sung.Part.Id == part && sung.Sings);

    private static IEnumerable<(int Midi, string? Vowel)> Notes(Exercise exercise, RungPart part)
    {
        SungLine line = new(exercise.PatternFor(part.Part)!, exercise.Mode);
        int lowest = line.Notes.Min(note => note.Interval.Semitones);
        return line.Notes.SelectMany(note => new[] { (part.Span.Low.Midi + note.Interval.Semitones - lowest, (string?)note.Vowel), (part.Span.Low.Midi + note.Interval.Semitones - lowest, null) });
    }
}
