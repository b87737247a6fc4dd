using System.CommandLine;
using System.Text;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Midi.Files;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.TakeAlong;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.MusicXml.Writing;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup export</c>: a plan that leaves the laptop, as notes to play or to read, or as a page of paper.</summary>
internal static class ExportCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string?> plan = Options.Plan();
        Option<string?> choir = Options.Choir();
        Option<string?> part = new("--part") { Description = AppTexts.ExportPartAbout, HelpName = "PART" };
        Option<string?> midi = new("--midi") { Description = AppTexts.MidiAbout, HelpName = "FILE" };
        Option<string?> musicXml = new("--musicxml") { Description = AppTexts.MusicXmlAbout, HelpName = "FILE" };
        Option<string?> sheet = new("--sheet") { Description = AppTexts.SheetAbout, HelpName = "FILE" };
        Option<bool> force = new("--force") { Description = AppTexts.ForceAbout };
        Command command = new("export", AppTexts.ExportAbout) { plan, choir, midi, musicXml, sheet, part, force };
        command.Validators.Add(result =>
        {
            if (new[] { midi, musicXml, sheet }.All(file => result.GetValue(file) is null))
            {
                result.AddError(AppTexts.ExportNothing);
            }
        });
        command.SetAction(parsed =>
        {
            FileRead<Content> read = Content.Load(composition, parsed.GetValue(plan), parsed.GetValue(choir));
            ExportFiles files = new(parsed.GetValue(midi), parsed.GetValue(musicXml), parsed.GetValue(sheet));
            return read.IsGood
                ? Export(read.Value, parsed.GetValue(part), files, parsed.GetValue(force), parsed.InvocationConfiguration)
                : Problems.Print(read.Problems, parsed.InvocationConfiguration.Error);
        });
        return command;
    }

    private static int Export(Content content, string? partText, ExportFiles files, bool force, InvocationConfiguration surroundings)
    {
        IReadOnlyList<Part> parts = content.Warmup.Choir.Parts;
        Part? part = parts.FirstOrDefault(part => part.Id == partText || part.Letters.Contains(partText?.ToLowerInvariant()));
        if (partText is not null && part is null)
        {
            surroundings.Error.WriteLine(AppTexts.NoSuchPart(Printable.Line(partText), parts.Select(part => part.Id)));
            return ExitCodes.BadInput;
        }

        Warmup warmup = part is null ? content.Warmup : HomeWarmup.For(content.Warmup, part);
        if (WhyNot(warmup, part, files) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(content.Plan.Path, reason)], surroundings.Error);
        }

        return FilesTogether.Write([.. Contents(warmup, part, files)], force) is { } problem
            ? Problems.Print([problem], surroundings.Error)
            : Tell(warmup, part, files, surroundings.Output);
    }

    private static string? WhyNot(Warmup warmup, Part? part, ExportFiles files) => warmup.Steps.Count switch
    {
        0 => AppTexts.ExportNoSteps,
        _ when part is not null && warmup.Steps.All(step => step.Ladder.Rungs.Count == 0) => AppTexts.ExportNoKey(PartPlural.Of(part)),
        _ when files.Midi is not null && warmup.Choir.Parts.Count >= SmfPiece.MostTracks => AppTexts.ExportManyParts(warmup.Choir.Parts.Count, SmfPiece.MostTracks - 1),
        _ => null,
    };

    private static IEnumerable<(string Path, byte[] Bytes)> Contents(Warmup warmup, Part? part, ExportFiles files)
    {
        IReadOnlyList<string> remarks = part is null ? [] : [TakeAlongTexts.CareTitle, .. TakeAlongTexts.Care];
        if (files.Midi is { } midi)
        {
            yield return (midi, SmfPiece.Build(WarmupWriter.Write(warmup, remarks)));
        }

        if (files.MusicXml is { } musicXml)
        {
            yield return (musicXml, MusicXmlSheet.Write(warmup, remarks));
        }

        if (files.Sheet is { } sheet)
        {
            yield return (sheet, Encoding.UTF8.GetBytes(SheetPage.Write(warmup, part)));
        }
    }

    private static int Tell(Warmup warmup, Part? part, ExportFiles files, TextWriter output)
    {
        foreach (string path in files.Named)
        {
            output.WriteLine(AppTexts.PageWritten(Printable.Line(path)));
        }

        foreach ((int index, WarmupStep step) in warmup.Steps.Index().Where(step => step.Item.Exercise.IsSung && step.Item.Ladder.Rungs.Count == 0))
        {
            output.WriteLine(AppTexts.ExportLeftOut(TakeAlongTexts.Step(index, step)));
        }

        if (part is not null)
        {
            output.WriteLine(string.Join('\n', [$"{TakeAlongTexts.CareTitle}.", .. TakeAlongTexts.Care]));
        }

        return ExitCodes.Ok;
    }

    /// <summary>The files asked for.</summary>
    private sealed record ExportFiles(string? Midi, string? MusicXml, string? Sheet)
    {
        internal IEnumerable<string> Named => new[] { Midi, MusicXml, Sheet }.OfType<string>();
    }
}
