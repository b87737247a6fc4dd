using Terminal.Gui.Input;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Screens;

/// <summary>
/// What the screen itself remembers (mark line, help page, a word about the last key) and what keys do with it. It decides
/// nothing about the session: it posts inputs. One thread.
/// </summary>
public sealed class ScreenControl(ILiveConsole console)
{
    private static readonly TimeSpan Bounce = TimeSpan.FromSeconds(0.5);

    private Notice? _notice;
    private string? _closer;
    private Moment _closerRests;
    private bool _helpOpen;
    private bool _leaveAsked;

    public MarkLine Line { get; private set; } = MarkLine.Closed;

    /// <summary>True once the director confirmed that the console is to be left.</summary>
    public bool Leaves { get; private set; }

    /// <summary>Which keys work now, and why the others do not.</summary>
    public IReadOnlyList<KeyHint> Hints => [.. KeyTable.Rows.Select(row => new KeyHint(row, WhyNot(row)))];

    /// <summary>What is to be shown now, without the keys: asking for those costs more, and only a change asks.</summary>
    public ScreenModel Model() => new(console.Session, console.Status, Line, console.Now)
    {
        OwnNotice = _notice,
        HelpOpen = _helpOpen,
    };

    public void Press(Key key)
    {
        string stroke = KeyStroke.Name(key);
        if (key.IsModifierOnly || IsBounce(stroke))
        {
            return;
        }

        bool wasOpen = Line.IsOpen;
        bool confirmed = _leaveAsked;
        _leaveAsked = false;
        if (KeyTable.Find(stroke, Line.IsOpen) is { } row)
        {
            Do(row, confirmed);
        }
        else if (KeyStroke.Printed(key) is { } printed)
        {
            Write(printed);
        }

        if (wasOpen && !Line.IsOpen)
        {
            (_closer, _closerRests) = (stroke, console.Now + Bounce);
        }
    }

    /// <summary>Pasted text goes to the mark line as if it had been typed.</summary>
    public void Paste(string text) => Type(text);

    /// <summary>The key that closed the mark line means something else now: not yet, though, while it bounces or is held down.</summary>
    private bool IsBounce(string stroke)
    {
        if (Line.IsOpen || stroke != _closer || console.Now >= _closerRests)
        {
            return false;
        }

        _closerRests = console.Now + Bounce;
        return true;
    }

    private void Write(string printed)
    {
        if (Line.IsOpen || KeyStroke.OpensLine(printed))
        {
            Type(printed);
        }
        else
        {
            Say(ScreenTexts.UnknownKey);
        }
    }

    private void Type(string text)
    {
        (_helpOpen, _leaveAsked, _notice) = (false, false, null);
        Line = Line.Type(text, console.Session.AnchorAt(console.Now));
    }

    private void Do(KeyRow row, bool confirmed)
    {
        _notice = null;
        if (row.Action == LiveAction.Silence)
        {
            // Silence is never argued about: what the screen knows may be a moment old.
            console.Post(new LiveInput.Act(LiveAction.Silence));
        }
        else if (WhyNot(row) is { } reason)
        {
            Say(reason);
        }
        else if (row.Action is { } action)
        {
            console.Post(new LiveInput.Act(action));
        }
        else
        {
            Do(row.Command!.Value, confirmed);
        }
    }

    private void Do(ScreenCommand command, bool confirmed)
    {
        switch (command)
        {
            case ScreenCommand.KeepMark:
                Keep();
                break;
            case ScreenCommand.EraseLetter:
                Line = Line.Erase();
                break;
            case ScreenCommand.UndoMark:
                console.Post(new LiveInput.UndoMark());
                break;
            case ScreenCommand.MoveMarkBack:
                console.Post(new LiveInput.MoveMarkBack());
                break;
            case ScreenCommand.Help:
                _helpOpen = !_helpOpen;
                break;
            case ScreenCommand.Leave:
                Leave(confirmed);
                break;
        }
    }

    private void Keep()
    {
        if (Line.Kept is { } mark)
        {
            console.Post(new LiveInput.MarkKept(mark.Raw, mark.Anchor));
        }
        else
        {
            Say(ScreenTexts.NothingWritten);
        }

        Line = MarkLine.Closed;
    }

    private void Leave(bool confirmed)
    {
        Leaves = confirmed || console.Session.State is LiveState.Ready or LiveState.Finished;
        _leaveAsked = !Leaves;
        if (_leaveAsked)
        {
            Say(ScreenTexts.LeaveAgain);
        }
        else if (Line.IsOpen)
        {
            Keep(); // nothing typed is ever lost
        }
    }

    private string? WhyNot(KeyRow row) => (row.Action, row.Command, console.Session.Marks.Count) switch
    {
        ({ } action, _, _) => console.WhyNot(action),
        (_, ScreenCommand.UndoMark, 0) => ScreenTexts.NothingToUndo,
        (_, ScreenCommand.MoveMarkBack, 0) => ScreenTexts.NothingToMove,
        _ => null,
    };

    private void Say(string text) => _notice = new(text, false, console.Now);
}
