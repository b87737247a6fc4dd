using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;

namespace WarmupConsole.App.Running;

/// <summary>A quiet scale and a chord on a port, through the same player as a warm-up.</summary>
internal static class PortTrial
{
    internal static int Play(Composition composition, PortChoice choice, TextWriter output)
    {
        using IPlayer player = composition.StartPlayer(PlayerFiles.None);
        PlayerReport? opening = PianoOpening.Open(player, choice);
        output.WriteLine(opening?.Sentence ?? AppTexts.NothingSounds);
        if (opening?.Kind != PlayerReportKind.PortOpened)
        {
            return ExitCodes.BadInput;
        }

        output.WriteLine(AppTexts.HearingCaution);
        NotesPlaying.Through(player, composition, PortTest.Tempo, PortTest.Notes());
        return ExitCodes.Ok;
    }
}
