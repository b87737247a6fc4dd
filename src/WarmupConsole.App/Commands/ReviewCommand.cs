using System.CommandLine;
using System.Text;
using WarmupConsole.App.Reports;
using WarmupConsole.App.Running;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Yaml;
using WarmupConsole.Tui.Hosting;
using WarmupConsole.Tui.Presentation.Reviewing;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup review</c>: the last session in words and numbers, and what the last weeks show.</summary>
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
        SeasonOptions season = SeasonOptions.AddTo(command);
        DismissCommands.AddTo(command, composition);
        command.SetAction(parsed =>
        {
            bool isJson = parsed.GetValue(json);
            Func<LastSession, string> write = isJson ? ReviewReport.ToJson : last => ReviewText.Write(last.Review, last.Content.Choir, parsed.GetValue(all));
            return parsed.GetValue(session) is { } file
                ? Print(LastSession.Load(file), write, parsed.InvocationConfiguration)
                : PrintAll(Content.Open(composition, null, parsed.GetValue(choir)), (write, isJson), season.Of(parsed), parsed.InvocationConfiguration);
        });
        return command;
    }

    /// <summary>The last session, and what the last weeks show.</summary>
    private static int PrintAll(
        FileRead<ChoirFolder> folder, (Func<LastSession, string> Write, bool IsJson) how, (string? Page, bool AsCsv, bool OnScreen, int Weeks) season, InvocationConfiguration surroundings)
    {
        FileRead<LastSession> last = folder.IsGood ? LastSession.Newest(folder.Value) : new(null, folder.Problems);
        if (!folder.IsGood || folder.Value.SessionPaths.Count == 0)
        {
            return Problems.Print(last.Problems, surroundings.Error);
        }

        SeasonReview review = SeasonReview.Of(folder.Value, season.Weeks);
        return season.AsCsv || season.Page is not null || season.OnScreen
            ? Elsewhere(review, last.IsGood && !how.IsJson ? how.Write(last.Value) : "", season, surroundings)
            : Tell(review, last, how, surroundings);
    }

    private static int Tell(SeasonReview review, FileRead<LastSession> last, (Func<LastSession, string> Write, bool IsJson) how, InvocationConfiguration surroundings)
    {
        string words = last.IsGood ? how.Write(last.Value) : how.IsJson ? "{}" : "";
        surroundings.Output.Write(how.IsJson ? SeasonReport.Into(words, review) : words + SeasonText.Write(review));
        return last.IsGood ? Problems.PrintDamages(last.Value, surroundings.Error) : Problems.Print(last.Problems, surroundings.Error);
    }

    /// <summary>As counts, as a page or on the whole screen.</summary>
    private static int Elsewhere(SeasonReview review, string words, (string? Page, bool AsCsv, bool OnScreen, int Weeks) season, InvocationConfiguration surroundings)
    {
        if (season.Page is { } page)
        {
            return WritePage(page, SeasonPage.Write(review, words), surroundings);
        }

        if (season.OnScreen)
        {
            return Show(ReviewModelOf.Season(review, words), surroundings);
        }

        surroundings.Output.Write(RatesCsv.Write(review));
        return ExitCodes.Ok;
    }

    private static int Show(ReviewModel review, InvocationConfiguration surroundings)
    {
        if (TerminalHost.HasTerminal)
        {
            return TerminalHost.Show(review);
        }

        surroundings.Error.WriteLine(AppTexts.NoTerminal);
        return ExitCodes.BadInput;
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
