using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.Live;

/// <summary>What is told around the warm-up: before it what differs tonight, behind it what is heard in the rehearsal.</summary>
internal sealed class LiveEvening(LiveTurn turn)
{
    private LiveSession Session => turn.Session;

    /// <summary>The ladders of all steps follow at once; once one is led, they stand.</summary>
    public void Tell(LiveInput.TellTonight told)
    {
        if (Session.State != LiveState.Ready)
        {
            turn.Tell(LiveTexts.TonightIsToldBefore);
            return;
        }

        Choir usual = Session.Warmup.UsualChoir;
        turn.Session = StepLeading.AtStep(Session with { Warmup = WarmupBuilder.For(told.Tonight, Session.Warmup) }, Session.StepIndex);
        turn.Record(TonightFact.Write(told.Tonight, told.Raw));
        turn.Tell(told.Tonight.IsAsUsual ? LiveTexts.TonightAsUsual : LiveTexts.TonightIs(Words(told.Tonight, usual)));
    }

    /// <summary>What follows from it; the screen shows beside it what was told.</summary>
    private static string Words(Tonight tonight, Choir usual) =>
        TonightText.Effect(tonight, usual) is { Length: > 0 } effect ? effect : TonightText.Write(tonight, usual);

    /// <summary>The piece holds for the marks after it, until another one is named.</summary>
    public void Keep(LiveInput.RehearsalKept kept)
    {
        if (Session.State != LiveState.Finished)
        {
            turn.Tell(LiveTexts.RehearsalComesAfter);
            return;
        }

        Choir choir = Session.Warmup.UsualChoir;
        RehearsalLine line = RehearsalLine.Read(kept.Raw, Session.RehearsalMarks is [.., { } last] ? last.Piece : "");
        MarkContent content = MarkGrammar.Parse(line.Words, choir)[0];
        RehearsalMarked mark = new(
            kept.Raw, line.Piece, line.Bars, content.PartIds, content.KindId, content.Pitch?.Midi, content.Place, turn.Now.Nanoseconds, content.Strength);
        turn.Session = Session with { RehearsalMarks = [.. Session.RehearsalMarks, new(line.Piece, line.Bars, RehearsalLine.Echo(line, content, choir))] };
        turn.Record(mark);
    }
}
