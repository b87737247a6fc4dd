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
        Option<bool> json = Options.Json();
        Command command = new("export", AppTexts.ExportAbout) { plan, choir, midi, musicXml, sheet, part, force, json };
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
            Wish wish = new(parsed.GetValue(part), parsed.GetValue(midi), parsed.GetValue(musicXml), parsed.GetValue(sheet), parsed.GetValue(force), parsed.GetValue(json));
            return read.IsGood
                ? Export(read.Value, wish, parsed.InvocationConfiguration)
                : Problems.Print(read.Problems, parsed.InvocationConfiguration.Error);
        });
        return command;
    }

    private static int Export(Content content, Wish wish, InvocationConfiguration surroundings)
    {
        IReadOnlyList<Part> parts = content.Warmup.Choir.Parts;
        Part? part = parts.FirstOrDefault(part => part.Id == wish.Part || part.Letters.Contains(wish.Part?.ToLowerInvariant()));
        if (wish.Part is not null && part is null)
        {
            surroundings.Error.WriteLine(AppTexts.NoSuchPart(Printable.Line(wish.Part), parts.Select(part => part.Id)));
            return ExitCodes.BadInput;
        }

        Warmup warmup = part is null ? content.Warmup : HomeWarmup.For(content.Warmup, part);
        if (WhyNot(warmup, part, wish) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(content.Plan.Path, reason)], surroundings.Error);
        }

        if (FilesTogether.Write([.. Contents(warmup, part, wish)], wish.Force) is { } problem)
        {
            return Problems.Print([problem], surroundings.Error);
        }

        string[] leftOut = [.. warmup.Steps.Index().Where(step => step.Item.Exercise.IsSung && step.Item.Ladder.Rungs.Count == 0).Select(step => TakeAlongTexts.Step(step.Index, step.Item))];
        surroundings.Output.WriteLine(wish.AsJson ? new ExportReport([.. wish.Named], leftOut).ToJson() : string.Join('\n', Told(wish, leftOut, part)));
        return ExitCodes.Ok;
    }

    private static string? WhyNot(Warmup warmup, Part? part, Wish wish) => warmup.Steps.Count switch
    {
        0 => AppTexts.ExportNoSteps,
        _ when part is not null && warmup.Steps.All(step => step.Ladder.Rungs.Count == 0) => AppTexts.ExportNoKey(PartPlural.Of(part)),
        _ when wish.Midi is not null && warmup.Choir.Parts.Count >= SmfPiece.MostTracks => AppTexts.ExportManyParts(warmup.Choir.Parts.Count, SmfPiece.MostTracks - 1),
        _ => null,
    };

    private static IEnumerable<(string Path, byte[] Bytes)> Contents(Warmup warmup, Part? part, Wish wish)
    {
        IReadOnlyList<string> remarks = part is null ? [] : [TakeAlongTexts.CareTitle, .. TakeAlongTexts.Care];
        if (wish.Midi is { } midi)
        {
            yield return (midi, SmfPiece.Build(WarmupWriter.Write(warmup, remarks)));
        }

        if (wish.MusicXml is { } musicXml)
        {
            yield return (musicXml, MusicXmlSheet.Write(warmup, remarks));
        }

        if (wish.Sheet is { } sheet)
        {
            yield return (sheet, Encoding.UTF8.GetBytes(SheetPage.Write(warmup, part)));
        }
    }

    private static IEnumerable<string> Told(Wish wish, string[] leftOut, Part? part) =>
    [
        .. wish.Named.Select(path => AppTexts.PageWritten(Printable.Line(path))),
        .. leftOut.Select(AppTexts.ExportLeftOut),
        .. part is null ? (string[])[] : [$"{TakeAlongTexts.CareTitle}.", .. TakeAlongTexts.Care],
    ];

    /// <summary>What was asked for.</summary>
    private sealed record Wish(string? Part, string? Midi, string? MusicXml, string? Sheet, bool Force, bool AsJson)
    {
        internal IEnumerable<string> Named => new[] { Midi, MusicXml, Sheet }.OfType<string>();
    }
}
