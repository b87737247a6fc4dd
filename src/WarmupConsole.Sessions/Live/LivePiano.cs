using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Live;

/// <summary>Another accompaniment for the rest of the present step. What was handed over to the player sounds as it is: a key never changes in its middle.</summary>
internal sealed class LivePiano(LiveTurn turn)
{
    public void Change(AccompanimentStyle style)
    {
        string words = PianoData.Words(style);
        if (style == turn.Session.Piano.Style)
        {
            turn.Tell(LiveTexts.PianoPlaysThat(words));
            return;
        }

        turn.Session = turn.Session with { Style = style };
        turn.Record(new AccompanimentChanged(turn.Session.StepIndex, PianoData.Id(style)));
        turn.Tell(turn.Session switch
        {
            { Follows: true } => LiveTexts.PianoOnceItLeads(words),
            { Hold: Hold.None, State: LiveState.CountIn or LiveState.Breath } => LiveTexts.PianoFromKeyAfter(words),
            _ => LiveTexts.PianoFromNextKey(words),
        });
    }
}
