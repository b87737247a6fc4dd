using WarmupConsole.Midi.Protocol;

namespace WarmupConsole.Midi.Player;

/// <summary>From the player's frames to reports for the director.</summary>
internal static class PlayerReports
{
    /// <summary>Null for frames that are not for the director.</summary>
    internal static PlayerReport? From(Frame? frame) => frame switch
    {
        Frame.PortOpened opened => new(PlayerReportKind.PortOpened, opened.Sentence),
        Frame.PortFailed failed => new(PlayerReportKind.PortFailed, failed.Sentence),
        Frame.PortLost lost => new(PlayerReportKind.PortLost, lost.Sentence),
        Frame.Refused refused => new(PlayerReportKind.NotesRefused, refused.Sentence),
        _ => null,
    };
}
