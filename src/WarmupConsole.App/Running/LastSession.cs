using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>A session log looked back on.</summary>
/// <param name="Path">Its file.</param>
/// <param name="Content">Choir, plan and exercises of that evening.</param>
/// <param name="Review">What it shows.</param>
/// <param name="Damages">What of it could not be read.</param>
internal sealed record LastSession(string Path, LoggedContent Content, SessionReview Review, IReadOnlyList<LogDamage> Damages)
{
    /// <summary>The newest log of the choir.</summary>
    internal static FileRead<LastSession> Newest(ChoirFolder folder) =>
        folder.SessionPaths is [.., var newest] ? Load(newest) : Bad(folder.Root, AppTexts.NoSessions);

    /// <summary>A log, or why it cannot be understood.</summary>
    internal static FileRead<LastSession> Load(string file)
    {
        FileRead<SessionLog> log = SessionLogFile.Read(file);
        if (!log.IsGood)
        {
            return new(null, log.Problems);
        }

        return log.Value.Start is { } start && LoggedContent.Read(start, log.Value.Records) is { } content
            ? new(new(file, content, LookBack(file, log.Value, content), log.Value.Damages), [])
            : Bad(file, AppTexts.NoStart);
    }

    /// <summary>True while a console leads this session.</summary>
    internal bool IsRunning => Review.Ending == SessionReview.Running;

    private static SessionReview LookBack(string file, SessionLog log, LoggedContent content)
    {
        SessionReview review = SessionReview.From(log.Records, content.Choir, content.Exercises, content.Plan);
        return review.Ending == SessionReview.CutOff && SessionLogFile.IsBeingWritten(file) ? review with { Ending = SessionReview.Running } : review;
    }

    private static FileRead<LastSession> Bad(string file, string message) => new(null, [FileProblem.Whole(file, message)]);
}
