using System.Globalization;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Live;

/// <summary>Faster, slower, tapped, and from key to key.</summary>
internal sealed class LiveTempo(LiveTurn turn)
{
    private LiveSession Session => turn.Session;

    public void Faster()
    {
        MoveTo(NextHeard);
        Change(MetronomeSteps.Faster(Session.Tempo) ?? Session.Tempo);
    }

    public void Slower()
    {
        MoveTo(NextHeard);
        Change(MetronomeSteps.Slower(Session.Tempo) ?? Session.Tempo);
    }

    public void Tap()
    {
        TempoTaps taps = Session.Taps.After(turn.Now);
        turn.Session = Session with { Taps = taps };
        if (taps.Mean is not { } tempo)
        {
            turn.Tell(LiveTexts.TapOn(taps.Missing.ToString(CultureInfo.InvariantCulture)));
            return;
        }

        MoveTo(NextHeard);
        Change(tempo);
        turn.Tell(LiveTexts.TempoTapped(tempo.ToString()));
    }

    /// <summary>True when the plan has another tempo for a key than for the present one.</summary>
    public bool ChangesAt(int key) => Moved(key) != Session.Tempo;

    /// <summary>A tempo that the plan changes from key to key goes on to a key's share of it; what the director changed is kept.</summary>
    public void MoveTo(int key) => turn.Session = Session with { Tempo = Moved(key), TempoKey = key };

    /// <summary>The key that a change is first heard in: after a whole one, that is the next.</summary>
    private int NextHeard => Session.RungIndex + (Session.State is LiveState.Breath or LiveState.Wait ? 1 : 0);

    private Tempo Moved(int key) => Session.Step!.Tempos.Moved(Session.Tempo, Session.TempoKey, key);

    private void Change(Tempo tempo)
    {
        turn.Session = Session with { Tempo = tempo };
        if (Session.NextWake is not null)
        {
            turn.SetTimeline(Session.Timeline.WithTempo(tempo, turn.Now));
        }
        else
        {
            // No beat runs: the next lead-in or breath starts a timeline of this tempo. The log keeps it all the same.
            turn.RecordTimeline(new(tempo, Session.StateStart, turn.Now));
        }
    }
}
