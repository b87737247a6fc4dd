using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Live;

/// <summary>Marks kept, taken back, moved and flushed.</summary>
internal sealed class LiveMarks(LiveTurn turn)
{
    private LiveSession Session => turn.Session;

    /// <summary>One line may hold several marks; they are taken back and moved together.</summary>
    public void Keep(string raw, MarkAnchor anchor)
    {
        foreach (MarkContent content in MarkGrammar.Parse(raw, Session.Warmup.Choir))
        {
            LiveMark mark = new(Session.NextMarkId, content, anchor, MarkWords.Echo(content, anchor, Session.Warmup.Choir), IsFlushed: false) { Fact = Session.MarkFacts + 1 };
            Record(Made(mark), [.. Session.Marks, mark]);
            turn.Session = Session with { NextMarkId = mark.Id + 1 };
        }
    }

    public void Undo()
    {
        foreach (LiveMark mark in NewestLine())
        {
            Record(new MarkUndone(mark.Id), [.. Session.Marks.Where(other => other.Id != mark.Id)]);
        }
    }

    public void MoveBack()
    {
        LiveMark[] line = NewestLine();
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

    private void Record(SessionEvent fact, IReadOnlyList<LiveMark> marks)
    {
        turn.Session = Session with { Marks = marks, MarkFacts = Session.MarkFacts + 1 };
        turn.Record(fact);
    }

    /// <summary>The marks of the line that was typed last; when there is none, the director is told.</summary>
    private LiveMark[] NewestLine()
    {
        if (Session.Marks.Count == 0)
        {
            turn.Tell(LiveTexts.NoMark);
            return [];
        }

        return [.. Session.Marks.Where(mark => LineOf(mark) == LineOf(Session.Marks[^1]))];
    }

    private static (Music.Rhythm.Moment At, string Raw) LineOf(LiveMark mark) => (mark.Anchor.At, mark.Content.Raw);

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
