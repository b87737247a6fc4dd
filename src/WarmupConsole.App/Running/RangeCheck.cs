using System.CommandLine;
using WarmupConsole.App.Commands;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Voices;
using WarmupConsole.Storage.Choirs;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>Finds the ranges of one part or of all and writes those that the director keeps.</summary>
internal sealed class RangeCheck(Composition composition, InvocationConfiguration surroundings)
{
    internal int Run(ChoirFolder folder, string? partText, PortChoice port)
    {
        if (composition.Answers is not { } answers)
        {
            surroundings.Error.WriteLine(AppTexts.NoTerminal);
            return ExitCodes.BadInput;
        }

        Part[] parts = [.. folder.Choir.Parts.Where(part => partText is null || IsMeant(part, partText))];
        if (parts.Length == 0)
        {
            surroundings.Error.WriteLine(AppTexts.NoSuchPart(Printable.Line(partText!), folder.Choir.Parts.Select(part => part.Id)));
            return ExitCodes.BadInput;
        }

        surroundings.Output.WriteLine(AppTexts.RangeCaution);
        using NotePiano piano = new(composition.StartPlayer(PlayerFiles.None), composition.Clock);
        surroundings.Output.WriteLine($"{piano.Open(port)} {AppTexts.RangeNoPiano}");
        RangeDialogue dialogue = new(piano, folder.Choir.Notes, answers, surroundings.Output);
        return parts.Select(part => Ask(dialogue, folder, part)).Aggregate(ExitCodes.Ok, Math.Max);
    }

    private static bool IsMeant(Part part, string text) =>
        part.Id == text || part.Letters.Contains(text.ToLowerInvariant());

    private int Ask(RangeDialogue dialogue, ChoirFolder folder, Part part)
    {
        string day = DayText.Write(composition.Today);
        if (dialogue.HasEnded || dialogue.Ask(part, day) is not { } range)
        {
            return ExitCodes.Ok;
        }

        if (RangesFile.Append(folder.RangesPath, new(part.Id, composition.Today, range)) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(folder.RangesPath, reason)], surroundings.Error);
        }

        surroundings.Output.WriteLine(AppTexts.PlanWritten(folder.RangesPath));
        return ExitCodes.Ok;
    }
}
