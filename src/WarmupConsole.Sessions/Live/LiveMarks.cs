using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Live;

/// <summary>Marks kept, taken back, moved and flushed.</summary>
internal sealed class LiveMarks(LiveTurn turn)
{
    private LiveSession Session => turn.Session;

    public void Keep(string raw, MarkAnchor anchor)
    {
        MarkContent content = MarkGrammar.Parse(raw, Session.Warmup.Choir);
        LiveMark mark = new(Session.NextMarkId, content, anchor, MarkWords.Echo(content, anchor, Session.Warmup.Choir), IsFlushed: false);
        turn.Session = Session with { Marks = [.. Session.Marks, mark], NextMarkId = mark.Id + 1 };
        turn.Record(Made(mark));
    }

    public void Undo()
    {
        if (Newest() is { } mark)
        {
            turn.Session = Session with { Marks = [.. Session.Marks.SkipLast(1)] };
            turn.Record(new MarkUndone(mark.Id));
        }
    }

    public void MoveBack()
    {
        if (Newest() is not { } mark)
        {
            return;
        }

        if (mark.Anchor.Rung == 0)
        {
            turn.Tell(LiveTexts.FirstRung);
            return;
        }

        MarkAnchor anchor = AnchorAt(Session, mark.Anchor with { Rung = mark.Anchor.Rung - 1 });
        string echo = MarkWords.Echo(mark.Content, anchor, Session.Warmup.Choir);
        turn.Session = Session with { Marks = [.. Session.Marks.SkipLast(1), mark with { Anchor = anchor, Echo = echo, IsFlushed = false }] };
        turn.Record(new MarkMoved(mark.Id, anchor.Step, anchor.Rung));
    }

    public void Flushed(int upToId) => turn.Session = Session with
    {
        Marks = [.. Session.Marks.Select(mark => mark.Id <= upToId ? mark with { IsFlushed = true } : mark)],
    };

    /// <summary>The anchor with the tonic of its rung: of the ladder as it is in the present step, as planned in any other.</summary>
    public static MarkAnchor AnchorAt(LiveSession session, MarkAnchor anchor)
    {
        IReadOnlyList<Music.Ladders.Rung> rungs = anchor.Step == session.StepIndex ? session.Rungs
            : anchor.Step < session.Warmup.Steps.Count ? session.Warmup.Steps[anchor.Step].Ladder.Rungs
            : [];
        return anchor with { Tonic = anchor.Rung < rungs.Count ? rungs[anchor.Rung].Tonic : null };
    }

    private LiveMark? Newest()
    {
        if (Session.Marks.Count == 0)
        {
            turn.Tell(LiveTexts.NoMark);
            return null;
        }

        return Session.Marks[^1];
    }

    private static MarkMade Made(LiveMark mark) => new(
        mark.Id,
        mark.Anchor.Step,
        mark.Anchor.Rung,
        mark.Content.Raw,
        mark.Content.PartIds,
        mark.Content.KindId,
        (mark.Content.Key ?? mark.Anchor.Tonic)?.ToAscii(),
        mark.Content.Key is not null,
        mark.Content.Pitch?.Midi,
        mark.Content.Place,
        mark.Anchor.At.Nanoseconds);
}
