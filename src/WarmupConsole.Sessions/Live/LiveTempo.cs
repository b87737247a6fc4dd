using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Live;

/// <summary>Faster and slower.</summary>
internal sealed class LiveTempo(LiveTurn turn)
{
    public void Faster() => Change(MetronomeSteps.Faster(turn.Session.Tempo));

    public void Slower() => Change(MetronomeSteps.Slower(turn.Session.Tempo));

    private void Change(Tempo? wanted)
    {
        if (wanted is not { } tempo)
        {
            return;
        }

        turn.Session = turn.Session with { Tempo = tempo };
        if (turn.Session.NextWake is not null)
        {
            turn.SetTimeline(turn.Session.Timeline.WithTempo(tempo, turn.Now));
        }
        else
        {
            // No beat runs: the next lead-in or breath starts a timeline of this tempo. The log keeps it all the same.
            turn.RecordTimeline(new(tempo, turn.Session.StateStart, turn.Now));
        }
    }
}
