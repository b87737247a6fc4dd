using WarmupConsole.Midi.Player;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.App.Running;

/// <summary>Plays notes from the first to the last, and comes back when they have sounded.</summary>
internal static class NotesPlaying
{
    private static readonly TimeSpan LeadTime = TimeSpan.FromMilliseconds(200);

    internal static void Through(IPlayer player, Composition composition, Tempo tempo, IReadOnlyList<ScoreNote> notes)
    {
        Timeline timeline = new(tempo, Beats.Zero, composition.Clock.Now + LeadTime);
        player.SetTimeline(1, timeline);
        player.Play(1, notes);
        Moment end = timeline.TimeAt(notes.Max(note => note.Start + note.Length)) + LeadTime;
        while (composition.Clock.Now < end)
        {
            Moment next = player.Pump(composition.Clock.Now) is { } pump ? Moment.Earlier(pump, end) : end;
            TimeSpan left = next - composition.Clock.Now;
            composition.Wait(left > TimeSpan.Zero ? left : TimeSpan.Zero);
        }
    }
}
