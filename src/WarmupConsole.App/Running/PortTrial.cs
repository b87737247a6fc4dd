using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.App.Running;

/// <summary>A quiet scale and a chord on a port, through the same player as a warm-up.</summary>
internal static class PortTrial
{
    private static readonly TimeSpan LeadTime = TimeSpan.FromMilliseconds(200);

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
        PlayThrough(player, composition);
        return ExitCodes.Ok;
    }

    private static void PlayThrough(IPlayer player, Composition composition)
    {
        IReadOnlyList<ScoreNote> notes = PortTest.Notes();
        Timeline timeline = new(PortTest.Tempo, Beats.Zero, composition.Clock.Now + LeadTime);
        player.SetTimeline(1, timeline);
        player.Play(1, notes);
        Moment end = timeline.TimeAt(notes.Max(note => note.Start + note.Length)) + LeadTime;
        using ManualResetEventSlim never = new();
        while (composition.Clock.Now < end)
        {
            Moment next = player.Pump(composition.Clock.Now) is { } pump ? Moment.Earlier(pump, end) : end;
            TimeSpan left = next - composition.Clock.Now;
            never.Wait(left > TimeSpan.Zero ? left : TimeSpan.Zero);
        }
    }
}
