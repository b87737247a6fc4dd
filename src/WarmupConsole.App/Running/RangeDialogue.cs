using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.App.Running;

/// <summary>The guided way to the ranges of one part: a note from the piano, a line from the director, and so on.</summary>
internal sealed class RangeDialogue(NotePiano piano, NoteNaming notes, TextReader answers, TextWriter output)
{
    private static readonly Dictionary<RangeStage, string> Stages = new()
    {
        [RangeStage.EasyUp] = AppTexts.EasyUp,
        [RangeStage.UtmostUp] = AppTexts.UtmostUp,
        [RangeStage.EasyDown] = AppTexts.EasyDown,
        [RangeStage.UtmostDown] = AppTexts.UtmostDown,
    };

    /// <summary>True once the director wants no more parts, or nobody answers any longer.</summary>
    internal bool HasEnded { get; private set; }

    /// <summary>The ranges that the director wants to keep, or null.</summary>
    internal VoiceRange? Ask(Part part, string day)
    {
        output.Write(AppTexts.RangePart(part.Name, Words(part.Range)));
        if (Letter() is not "")
        {
            return null;
        }

        output.WriteLine(AppTexts.RangeKeys);
        RangeWalk? walk = new(part.Range);
        while (walk is not null && walk.Stage != RangeStage.Done)
        {
            piano.Give(walk.Midi);
            output.Write(AppTexts.RangeNote(Stages[walk.Stage], notes.Write(walk.Note)));
            walk = Next(walk, Letter());
        }

        return walk is null ? null : Keep(part, walk.Found, day);
    }

    internal string Words(VoiceRange range) => AppTexts.BothRanges(range.Extreme.In(notes), range.Comfortable.In(notes));

    private RangeWalk? Next(RangeWalk walk, string? letter)
    {
        switch (letter)
        {
            case null or "s":
                return null;
            case "" or "e":
                return walk.After(RangeAnswer.StillGood);
            case "l":
                return walk.After(RangeAnswer.LastOne);
            case "n":
                return walk.After(RangeAnswer.NotThisOne);
            case "b":
                return walk.Before ?? walk;
            case "a":
                return walk;
            default:
                output.WriteLine(AppTexts.RangeKeys);
                return walk;
        }
    }

    private VoiceRange? Keep(Part part, VoiceRange found, string day)
    {
        output.WriteLine(AppTexts.RangeResult(part.Name, Words(found)));
        output.Write(AppTexts.RangeKeep(day));
        if (Letter() == "y")
        {
            return found;
        }

        output.WriteLine(AppTexts.RangeDropped);
        return null;
    }

    /// <summary>The first letter of the next line, empty for a bare Enter; null when the director ends it or is gone.</summary>
    private string? Letter()
    {
        string? line = answers.ReadLine()?.Trim().ToLowerInvariant();
        HasEnded |= line is null || line.StartsWith('q');
        return HasEnded ? null : line!.Length == 0 ? "" : line[..1];
    }
}
