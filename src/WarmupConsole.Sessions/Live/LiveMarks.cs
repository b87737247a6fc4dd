using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Live;

/// <summary>Marks kept, taken back, moved and flushed.</summary>
internal sealed class LiveMarks(LiveTurn turn)
{
    private LiveSession Session => turn.Session;

    /// <summary>One line may hold several marks; they are taken back and moved together. The first one puts a pin in words, unless that was taken back meanwhile or has words already.</summary>
    public void Keep(LiveInput.MarkKept kept)
    {
        LiveMark? pin = Session.Marks.FirstOrDefault(mark => mark.Id == kept.Pin && mark.IsPin);
        IReadOnlyList<MarkContent> contents = MarkGrammar.Parse(kept.Raw, Session.Warmup.Choir);
        if (pin is not null)
        {
            PutInWords(pin, contents[0]);
        }

        foreach (MarkContent content in contents.Skip(pin is null ? 0 : 1))
        {
            Add(content, pin?.Anchor ?? kept.Anchor);
        }
    }

    public void Pin() => Add(new("", [], null, null, null, ""), Session.AnchorAt(turn.Now));

    public void Undo()
    {
        foreach (LiveMark mark in NewestLine())
        {
            Record(new MarkUndone(mark.Id), [.. Session.Marks.Where(other => other.Id != mark.Id)]);
        }
    }

    public void MoveBack()
    {
        IReadOnlyList<LiveMark> line = NewestLine();
        if (line is [{ Anchor.Rung: 0 }, ..])
        {
            turn.Tell(LiveTexts.FirstRung);
            return;
        }

        foreach (LiveMark mark in line)
        {
            MarkAnchor anchor = AnchorAt(Session, mark.Anchor with { Rung = mark.Anchor.Rung - 1 });
            string echo = MarkWords.Echo(mark.Content, anchor, Session.Warmup.Choir);
            LiveMark moved = mark with { Anchor = anchor, Echo = echo, IsFlushed = false, Fact = Session.MarkFacts + 1 };
            Record(new MarkMoved(mark.Id, anchor.Step, anchor.Rung), [.. Session.Marks.Select(other => other.Id == mark.Id ? moved : other)]);
        }
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

    private void Add(MarkContent content, MarkAnchor anchor)
    {
        LiveMark mark = Unflushed(Session.NextMarkId, content, anchor);
        Record(Made(mark), [.. Session.Marks, mark]);
        turn.Session = Session with { NextMarkId = mark.Id + 1 };
    }

    /// <summary>What was said last is the newest mark.</summary>
    private void PutInWords(LiveMark pin, MarkContent content)
    {
        LiveMark worded = Unflushed(pin.Id, content, pin.Anchor);
        MarkMade made = Made(worded);
        Record(
            new MarkWorded(made.Id, made.Raw, made.Parts, made.Kind, made.Key, made.KeyNamed, made.Pitch, made.Place, made.Strength),
            [.. Session.Marks.Where(mark => mark != pin), worded]);
    }

    private LiveMark Unflushed(int id, MarkContent content, MarkAnchor anchor) =>
        new(id, content, anchor, MarkWords.Echo(content, anchor, Session.Warmup.Choir), IsFlushed: false) { Fact = Session.MarkFacts + 1 };

    private void Record(SessionEvent fact, IReadOnlyList<LiveMark> marks)
    {
        turn.Session = Session with { Marks = marks, MarkFacts = Session.MarkFacts + 1 };
        turn.Record(fact);
    }

    /// <summary>When there is no mark, the director is told.</summary>
    private IReadOnlyList<LiveMark> NewestLine()
    {
        if (Session.Marks.Count == 0)
        {
            turn.Tell(LiveTexts.NoMark);
        }

        return Session.NewestLine;
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
        mark.Anchor.At.Nanoseconds,
        mark.Content.Strength);
}
