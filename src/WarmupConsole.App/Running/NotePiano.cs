using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;

namespace WarmupConsole.App.Running;

/// <summary>A piano that gives single notes, one at a time, through the same player as a warm-up.</summary>
internal sealed class NotePiano(IPlayer player, IMonotonicClock clock) : IDisposable
{
    private const int Velocity = 64; // a note to sing after, not to sing against

    private static readonly TimeSpan LeadTime = TimeSpan.FromMilliseconds(100);
    private static readonly Tempo OneASecond = Tempo.FromBeatsPerMinute(60);
    private static readonly Beats Length = Beats.FromBeats(2);

    private long _generation;

    /// <summary>What it plays on, or why not.</summary>
    internal string Open(PortChoice choice) => PianoOpening.Open(player, choice)?.Sentence ?? AppTexts.NothingSounds;

    /// <summary>Ends the note before and gives this one.</summary>
    internal void Give(int midi)
    {
        player.Silence(++_generation);
        player.SetTimeline(_generation, new Timeline(OneASecond, Beats.Zero, clock.Now + LeadTime));
        player.Play(_generation, [new ScoreNote(midi, Beats.Zero, Length, Velocity)]);
        player.Pump(clock.Now);
    }

    /// <summary>Silences, then ends the player.</summary>
    public void Dispose()
    {
        player.Silence(++_generation);
        player.Dispose();
    }
}
