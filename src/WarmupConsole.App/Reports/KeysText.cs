using System.Globalization;
using System.Text;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.App.Reports;

/// <summary>Every key of a plan for a musician to read.</summary>
internal static class KeysText
{
    internal static string Write(Warmup warmup)
    {
        StringBuilder text = new();
        foreach ((int index, WarmupStep step) in warmup.Steps.Index())
        {
            text.Append(CultureInfo.InvariantCulture, $"{index + 1}. {step.Exercise.Title}, {Minutes.Of(step.Planned)}\n");
            Keys(text, step, warmup.Choir.Notes);
        }

        return text.Append(CultureInfo.InvariantCulture, $"Together {Minutes.Of(warmup.Planned)} of {warmup.Plan.Minutes}:00").ToString();
    }

    private static void Keys(StringBuilder text, WarmupStep step, NoteNaming notes)
    {
        foreach (Rung rung in step.Ladder.Rungs)
        {
            text.Append(CultureInfo.InvariantCulture, $"   {notes.Write(rung.Tonic),-4} {string.Join("  ", rung.Parts.Select(part => Part(part, notes)))}\n");
        }

        foreach (string reason in step.Ladder.Reasons)
        {
            text.Append(CultureInfo.InvariantCulture, $"   {reason}\n");
        }
    }

    private static string Part(RungPart part, NoteNaming notes) => part.Sings ? $"{part.Part.Name} {part.Span.In(notes)}" : $"({part.Part.Name} rests)";
}
