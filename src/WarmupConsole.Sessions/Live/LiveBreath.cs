using System.Globalization;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Live;

/// <summary>A longer or shorter breath between the keys of the present step.</summary>
internal sealed class LiveBreath(LiveTurn turn)
{
    /// <summary>As in a plan.</summary>
    public const int Shortest = 1;

    /// <summary>As in a plan.</summary>
    public const int Longest = 8;

    public void Longer() => Change(1);

    public void Shorter() => Change(-1);

    private void Change(int by)
    {
        int beats = turn.Session.Step!.Plan.BreathBeats + by;
        turn.Session = turn.Session with { BreathBeats = beats };
        turn.Record(new BreathChanged(turn.Session.StepIndex, beats));
        turn.Tell(LiveTexts.BreathOf(beats.ToString(CultureInfo.InvariantCulture)));
    }
}
