using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.App.Running;

/// <summary>Looks back on the log of the run that has just ended, for the rehearsal ahead.</summary>
internal static class AheadLook
{
    /// <summary>Nothing when the log cannot be read: nothing is guessed.</summary>
    internal static AheadCard Of(string path, Warmup warmup)
    {
        if (SessionLogFile.Read(path).Value is not { Start: { } start } log || LoggedContent.Read(start, log.Records) is not { } content)
        {
            return AheadCard.None;
        }

        SessionReview review = SessionReview.From(log.Records, content.Choir, content.Exercises, content.Plan);
        return new(RehearsalAhead.Of(review, warmup), RehearsalAhead.Times(review, warmup));
    }
}
