using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Live;

/// <summary>Silence and pause, beside the states.</summary>
internal sealed class LiveHolds(LiveTurn turn)
{
    /// <summary>Silence means silence: sent in every state. Where beats run it also holds them.</summary>
    public void Silence()
    {
        if (turn.Session is { Hold: Hold.None, StateEnd: not null })
        {
            Begin(Hold.Silenced);
        }
        else
        {
            turn.Silence();
        }
    }

    public void Pause() => Begin(Hold.Paused);

    /// <summary>Ends a hold, if there is one; the clocks go on.</summary>
    public void Release()
    {
        if (turn.Session.Hold != Hold.None)
        {
            Set(Hold.None);
        }
    }

    private void Begin(Hold hold)
    {
        turn.Silence();
        if (turn.Session is { State: LiveState.Rung, Hold: Hold.None })
        {
            turn.Record(new RungEnded(turn.Session.StepIndex, turn.Session.RungIndex, Whole: false));
        }

        Set(hold);
    }

    private void Set(Hold hold)
    {
        turn.Session = turn.Session with { Hold = hold, Clocks = turn.Session.Clocks.At(turn.Now, running: hold != Hold.Paused) };
        turn.Record(new HoldChanged(HoldText.Write(hold)));
    }
}
