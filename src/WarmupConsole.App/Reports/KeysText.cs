using System.Globalization;
using System.Text;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.App.Reports;

/// <summary>Every key of a plan for a musician to read: who sings, who rests, what is to be announced, and the range board.</summary>
internal static class KeysText
{
    /// <summary>All steps with their times, and the time they take together.</summary>
    internal static string Write(Warmup warmup)
    {
        StringBuilder text = new();
        foreach ((int index, WarmupStep step) in warmup.Steps.Index())
        {
            text.Append(CultureInfo.InvariantCulture, $"{index + 1}. {step.Exercise.Title}, {ClockText.Of(step.Planned)}\n");
            Keys(text, step, warmup.Choir.Notes);
        }

        return Board(text, warmup).Append(CultureInfo.InvariantCulture, $"Together {ClockText.Of(warmup.Planned)} of {warmup.Plan.Minutes}:00").ToString();
    }

    /// <summary>The keys of one exercise alone.</summary>
    internal static string WriteOne(Warmup warmup)
    {
        WarmupStep step = warmup.Steps[0];
        StringBuilder text = new();
        text.Append(CultureInfo.InvariantCulture, $"{step.Exercise.Title}: keys {step.Ladder.Rungs.Count}, announcements {step.Ladder.Announcements.Count}, {ClockText.Of(step.Planned)}\n");
        Keys(text, step, warmup.Choir.Notes);
        return Board(text, warmup).ToString().TrimEnd('\n');
    }

    private static void Keys(StringBuilder text, WarmupStep step, NoteNaming notes)
    {
        foreach ((int index, Rung rung) in step.Ladder.Rungs.Index())
        {
            string ahead = LadderAnnouncement.Ahead(step.Ladder.Rungs, index, notes) is { } announcement ? $"  > {announcement.Sentence}" : "";
            text.Append(CultureInfo.InvariantCulture, $"   {notes.Write(rung.Tonic),-4} {string.Join("  ", rung.Parts.Select(part => Part(part, notes)))}{ahead}\n");
        }

        foreach (string reason in step.Ladder.Reasons)
        {
            text.Append(CultureInfo.InvariantCulture, $"   {reason}\n");
        }
    }

    /// <summary>Where nobody sings there is nothing to draw.</summary>
    private static StringBuilder Board(StringBuilder text, Warmup warmup) =>
        warmup.Steps.Any(step => step.Ladder.Rungs.Count > 0) ? text.Append(RangeBoardText.Write(PartCoverage.Of(warmup), warmup.Choir.Notes)) : text;

    private static string Part(RungPart part, NoteNaming notes) => (part.Sings, part.OctaveShift) switch
    {
        (false, _) => $"({part.Part.Name} rests)",
        (true, 0) => $"{part.Part.Name} {part.Span.In(notes)}",
        _ => $"{part.Part.Name} {part.Span.In(notes)}*",
    };
}
