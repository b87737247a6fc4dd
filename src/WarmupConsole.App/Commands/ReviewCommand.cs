using System.CommandLine;
using System.Text;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup review</c>: the last session in words and numbers, and what the last weeks show.</summary>
internal static class ReviewCommand
{
    internal static Command Create(Composition composition)
    {
        Argument<string?> session = Options.Optional("session", AppTexts.SessionAbout);
        Option<string?> choir = Options.Choir();
        Option<bool> json = Options.Json();
        Command command = new("review", AppTexts.ReviewAbout);
        command.Add(session);
        command.Add(choir);
        command.Add(json);
        SeasonOptions season = SeasonOptions.AddTo(command);
        DismissCommands.AddTo(command, composition);
        command.SetAction(parsed => parsed.GetValue(session) is { } file
            ? Print(LastSession.Load(file), parsed.GetValue(json), parsed.InvocationConfiguration)
            : PrintAll(composition, (parsed.GetValue(choir), parsed.GetValue(json)), season.Of(parsed), parsed.InvocationConfiguration));
        return command;
    }

    /// <summary>The last session, and what the last weeks show.</summary>
    private static int PrintAll(Composition composition, (string? Choir, bool AsJson) what, (string? Page, bool AsCsv, int Weeks) season, InvocationConfiguration surroundings)
    {
        FileRead<ChoirFolder> folder = Content.Open(composition, null, what.Choir);
        FileRead<LastSession> last = folder.IsGood ? LastSession.Newest(folder.Value) : new(null, folder.Problems);
        if (!folder.IsGood || folder.Value.SessionPaths.Count == 0)
        {
            return Problems.Print(last.Problems, surroundings.Error);
        }

        SeasonReview review = SeasonReview.Of(folder.Value, season.Weeks);
        if (season.AsCsv)
        {
            surroundings.Output.Write(RatesCsv.Write(review));
            return ExitCodes.Ok;
        }

        if (what.AsJson)
        {
            surroundings.Output.Write(SeasonReport.Into(last.IsGood ? ReviewReport.From(last.Value.Review).ToJson() : "{}", review));
            return last.IsGood ? Problems.PrintDamages(last.Value, surroundings.Error) : Problems.Print(last.Problems, surroundings.Error);
        }

        if (season.Page is { } page)
        {
            return WritePage(page, SeasonPage.Write(review, last.IsGood ? ReviewText.Write(last.Value.Review, last.Value.Content.Choir) : ""), surroundings);
        }

        int code = Print(last, asJson: false, surroundings);
        surroundings.Output.Write(SeasonText.Write(review));
        return code;
    }

    private static int WritePage(string path, string page, InvocationConfiguration surroundings)
    {
        if (NewFile.Write(path, Encoding.UTF8.GetBytes(page)) is { } reason)
        {
            return Problems.Print([FileProblem.Whole(path, reason)], surroundings.Error);
        }

        surroundings.Output.WriteLine(AppTexts.PageWritten(path));
        return ExitCodes.Ok;
    }

    private static int Print(FileRead<LastSession> read, bool asJson, InvocationConfiguration surroundings)
    {
        if (!read.IsGood)
        {
            return Problems.Print(read.Problems, surroundings.Error);
        }

        LastSession last = read.Value;
        surroundings.Output.Write(asJson ? ReviewReport.From(last.Review).ToJson() + "\n" : ReviewText.Write(last.Review, last.Content.Choir));
        return Problems.PrintDamages(last, surroundings.Error);
    }
}
