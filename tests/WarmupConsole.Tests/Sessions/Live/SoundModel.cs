using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>What a player would hold: fails when it is handed something stale or out of order.</summary>
internal sealed class SoundModel
{
    private Beats? _lastStart;

    public long Generation { get; private set; } = 1;

    /// <summary>Notes handed over and not forgotten.</summary>
    public int Pending { get; private set; }

    public void Take(IEnumerable<LiveEffect> effects)
    {
        foreach (LiveEffect effect in effects)
        {
            Take(effect);
        }
    }

    private void Take(LiveEffect effect)
    {
        switch (effect)
        {
            case LiveEffect.Silence silence:
                Assert.Equal(Generation + 1, silence.Generation);
                (Generation, Pending, _lastStart) = (silence.Generation, 0, null);
                break;
            case LiveEffect.SetTimeline set:
                Assert.Equal(Generation, set.Generation);
                break;
            case LiveEffect.Play play:
                Assert.Equal(Generation, play.Generation);
                Assert.NotEmpty(play.Notes);
                Beats first = play.Notes.Min(note => note.Start);
                Assert.True(_lastStart is null || first >= _lastStart, $"Notes from beat {first} were handed over after beat {_lastStart}.");
                _lastStart = play.Notes.Max(note => note.Start);
                Pending += play.Notes.Count;
                break;
        }
    }
}
