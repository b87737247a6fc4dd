using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Live;

/// <summary>Marks kept, taken back, moved and flushed.</summary>
internal sealed class LiveMarks(LiveTurn turn)
{
    private LiveSession Session => turn.Session;

    /// <summary>A mark of its own; or the words of a pin, unless that was taken back meanwhile or has words already.</summary>
    public void Keep(LiveInput.MarkKept kept)
    {
        if (Session.Marks.FirstOrDefault(mark => mark.Id == kept.Pin && mark.IsPin) is { } pin)
        {
            PutInWords(pin, kept.Raw);
        }
        else
        {
            Add(kept.Raw, kept.Anchor);
        }
    }

    public void Pin() => Add("", Session.AnchorAt(turn.Now));

    public void Undo()
    {
        if (Newest() is { } mark)
        {
            Record(new MarkUndone(mark.Id), [.. Session.Marks.SkipLast(1)]);
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
        LiveMark moved = mark with { Anchor = anchor, Echo = echo, IsFlushed = false, Fact = Session.MarkFacts + 1 };
        Record(new MarkMoved(mark.Id, anchor.Step, anchor.Rung), [.. Session.Marks.SkipLast(1), moved]);
    }

    /// <summary>A mark is confirmed as it is now: by its newest fact.</summary>
    public void Flushed(int facts) => turn.Session = Session with
    {
        Marks = [.. Session.Marks.Select(mark => mark.Fact <= facts ? mark with { IsFlushed = true } : mark)],
    };

    /// <summary>The anchor with the tonic of its rung: of the ladder as it is in the present step, as planned in any other.</summary>
    public static MarkAnchor AnchorAt(LiveSession session, MarkAnchor anchor)
    {
        IReadOnlyList<Music.Ladders.Rung> rungs = anchor.Step == session.StepIndex ? session.Rungs
            : anchor.Step < session.Warmup.Steps.Count ? session.Warmup.Steps[anchor.Step].Ladder.Rungs
            : [];
        return anchor with { Tonic = anchor.Rung < rungs.Count ? rungs[anchor.Rung].Tonic : null };
    }

    private void Add(string raw, MarkAnchor anchor)
    {
        LiveMark mark = Unflushed(Session.NextMarkId, raw, anchor);
        Record(Made(mark), [.. Session.Marks, mark]);
        turn.Session = Session with { NextMarkId = mark.Id + 1 };
    }

    /// <summary>What was said last is the newest mark.</summary>
    private void PutInWords(LiveMark pin, string raw)
    {
        LiveMark worded = Unflushed(pin.Id, raw, pin.Anchor);
        MarkMade made = Made(worded);
        Record(
            new MarkWorded(made.Id, made.Raw, made.Parts, made.Kind, made.Key, made.KeyNamed, made.Pitch, made.Place),
            [.. Session.Marks.Where(mark => mark != pin), worded]);
    }

    private LiveMark Unflushed(int id, string raw, MarkAnchor anchor)
    {
        MarkContent content = MarkGrammar.Parse(raw, Session.Warmup.Choir);
        return new(id, content, anchor, MarkWords.Echo(content, anchor, Session.Warmup.Choir), IsFlushed: false) { Fact = Session.MarkFacts + 1 };
    }

    private void Record(SessionEvent fact, IReadOnlyList<LiveMark> marks)
    {
        turn.Session = Session with { Marks = marks, MarkFacts = Session.MarkFacts + 1 };
        turn.Record(fact);
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
