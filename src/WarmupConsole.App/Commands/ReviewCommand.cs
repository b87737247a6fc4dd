using System.CommandLine;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup review</c>: the last session in words and numbers.</summary>
internal static class ReviewCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string?> session = Options.Optional("session", AppTexts.SessionAbout);
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Option<bool> all = new("--all") { Description = AppTexts.AllPitchesAbout };
        Command command = new("review", AppTexts.ReviewAbout);
        command.Add(session);
        command.Add(choir);
        command.Add(json);
        command.Add(all);
        command.SetAction(parsed => Print(
            parsed.GetValue(session) is { } file ? LastSession.Load(file) : Newest(composition, parsed.GetValue(choir)),
            parsed.GetValue(json) ? ReviewReport.ToJson : (last => ReviewText.Write(last.Review, last.Content.Choir, parsed.GetValue(all))),
            parsed.InvocationConfiguration));
        return command;
    }

    private static FileRead<LastSession> Newest(Composition composition, string? choir)
    {
        FileRead<ChoirFolder> folder = Content.Open(composition, null, choir);
        return folder.IsGood ? LastSession.Newest(folder.Value) : new(null, folder.Problems);
    }

    private static int Print(FileRead<LastSession> read, Func<LastSession, string> write, InvocationConfiguration surroundings)
    {
        if (!read.IsGood)
        {
            return Problems.Print(read.Problems, surroundings.Error);
        }

        LastSession last = read.Value;
        surroundings.Output.Write(write(last));
        return Problems.PrintDamages(last, surroundings.Error);
    }
}
