using Terminal.Gui.Input;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Hands;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;
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
    private int? _tour = console.GivesTour ? 0 : null;

    /// <summary>What is being asked for, in front of the mark line; null when nothing is.</summary>
    public PromptLine? Prompt { get; private set; }

    public MarkLine Line { get; private set; } = MarkLine.Closed;

    /// <summary>True once the director confirmed that the console is to be left.</summary>
    public bool Leaves { get; private set; }

    /// <summary>Which keys work now, and why the others do not.</summary>
    public IReadOnlyList<KeyHint> Hints => [.. KeyTable.Rows.Select(row => new KeyHint(row, WhyNot(row)))];

    /// <summary>What is to be shown now, without the keys: asking for those costs more, and only a change asks.</summary>
    public ScreenModel Model() => new(console.Session, console.Status, Line, console.Now)
    {
        OwnNotice = _notice,
        Prompt = Prompt,
        Found = [.. Found.Select(exercise => exercise.Title)],
        HelpOpen = _helpOpen,
        Tour = _tour,
    };

    public void Press(Key key)
    {
        string stroke = KeyStroke.Name(key);
        if (key.IsModifierOnly || IsBounce(stroke))
        {
            return;
        }

        if (TakeTour(stroke))
        {
            return;
        }

        bool wasOpen = IsOpen;
        bool confirmed = _leaveAsked;
        _leaveAsked = false;
        if (KeyTable.Find(stroke, IsOpen) is { } row)
        {
            Do(row, confirmed);
        }
        else if (KeyStroke.Printed(key) is { } printed)
        {
            Write(printed);
        }

        if (wasOpen && !IsOpen)
        {
            (_closer, _closerRests) = (stroke, console.Now + Bounce);
        }
    }

    /// <summary>Pasted text goes to the mark line as if it had been typed.</summary>
    public void Paste(string text) => Type(text);

    /// <summary>The key that goes on turns to the next card; any other one ends the tour and does what it does.</summary>
    private bool TakeTour(string stroke)
    {
        if (_tour is not { } card)
        {
            return false;
        }

        bool goesOn = KeyTable.Find(stroke, lineOpen: false)?.Action == LiveAction.GoOn;
        _tour = goesOn && card + 1 < TourTexts.Cards.Count ? card + 1 : null;
        if (_tour is null)
        {
            console.TourIsOver();
        }

        return goesOn;
    }

    private bool IsOpen => Line.IsOpen || Prompt is not null;

    /// <summary>The key that closed the mark line means something else now: not yet, though, while it bounces or is held down.</summary>
    private bool IsBounce(string stroke)
    {
        if (IsOpen || stroke != _closer || console.Now >= _closerRests)
        {
            return false;
        }

        _closerRests = console.Now + Bounce;
        return true;
    }

    private void Write(string printed)
    {
        if (IsOpen || KeyStroke.OpensLine(printed))
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
        if (Prompt is not null)
        {
            TypeInPrompt(Prompt, text);
            return;
        }

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
            Act(action);
        }
        else
        {
            Do(row.Command!.Value, confirmed);
        }
    }

    /// <summary>At once, or once it is known which.</summary>
    private void Act(LiveAction action)
    {
        if (PromptLine.For(action) is { } kind)
        {
            Prompt = new(kind, "") { Opened = console.Now };
        }
        else
        {
            console.Post(new LiveInput.Act(action));
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
                Erase();
                break;
            case ScreenCommand.TakeSuggestion:
                TakeSuggestion();
                break;
            case ScreenCommand.Pin:
                console.Post(new LiveInput.PinMoment());
                break;
            case ScreenCommand.SayPin:
                Line = MarkLine.For(console.Session.Pins.First());
                break;
            case ScreenCommand.UndoMark:
                console.Post(new LiveInput.UndoMark());
                break;
            case ScreenCommand.MoveMarkBack:
                console.Post(new LiveInput.MoveMarkBack());
                break;
            case ScreenCommand.LearnPedal:
                Prompt = new(PromptKind.Pedal, "");
                break;
            case ScreenCommand.Help:
                _helpOpen = !_helpOpen;
                break;
            case ScreenCommand.Leave:
                Leave(confirmed);
                break;
            default:
                DoAround(command);
                break;
        }
    }

    /// <summary>What belongs before the start, and behind the end.</summary>
    private void DoAround(ScreenCommand command)
    {
        switch (command)
        {
            case ScreenCommand.Tonight:
                Prompt = PromptLine.ForTonight(console.Session);
                break;
            case ScreenCommand.EditPlan:
                console.AskForPlan();
                Leaves = true;
                break;
            case ScreenCommand.RehearsalMark:
                Prompt = PromptLine.ForRehearsal(console.Session);
                break;
        }
    }

    private void Erase()
    {
        if (Prompt is not null)
        {
            Prompt = Prompt.Erase();
        }
        else
        {
            Line = Line.Erase();
        }
    }

    private void Keep()
    {
        if (Prompt is not null)
        {
            Answer(Prompt);
            return;
        }

        if (Line.Kept is { } mark)
        {
            console.Post(new LiveInput.MarkKept(mark.Raw, mark.Anchor, Line.Pin));
        }
        else
        {
            Say(ScreenTexts.NothingWritten);
        }

        Line = MarkLine.Closed;
    }

    /// <summary>What the letters of a search find now.</summary>
    private IReadOnlyList<Exercise> Found =>
        Prompt is { IsSearch: true } search ? ExerciseFinder.Find(search.Text, console.Exercises, PromptLine.MostFound) : [];

    /// <summary>A key that was played answers a prompt for a key. To be called before the screen is shown.</summary>
    public void Listen()
    {
        if (Prompt is { Kind: PromptKind.Key } prompt && console.NewestKey is { } key && key.At > prompt.Opened)
        {
            Prompt = null;
            console.Post(new LiveInput.JumpTo(PromptLine.Played(key.Midi, console.Session)));
        }
    }

    private void TypeInPrompt(PromptLine prompt, string text)
    {
        if (text is not [>= '0' and <= '9' and char digit] || !Take(prompt, digit - '0'))
        {
            Prompt = prompt.Type(text);
        }
    }

    /// <summary>A digit takes what stands behind it; false where nothing does.</summary>
    private bool Take(PromptLine prompt, int digit)
    {
        switch (prompt.Kind)
        {
            case PromptKind.Pedal when digit <= PedalUseData.All.Count:
                Prompt = null;
                console.Learn(digit == 0 ? null : PedalUseData.All[digit - 1]);
                return true;
            case PromptKind.Piano when digit > 0 && digit <= PianoData.Styles.Count:
                Prompt = null;
                console.Post(new LiveInput.Accompany(PianoData.Styles[digit - 1].Value));
                return true;
            case PromptKind.InsertNext or PromptKind.InsertNow when digit > 0 && digit <= Found.Count:
                Insert(prompt, Found[digit - 1]);
                return true;
            default:
                return false;
        }
    }

    private void Insert(PromptLine prompt, Exercise exercise)
    {
        Prompt = null;
        console.Insert(exercise, prompt.Kind == PromptKind.InsertNow);
    }

    private void Answer(PromptLine prompt)
    {
        if (Found is [var first, ..])
        {
            Insert(prompt, first);
            return;
        }

        Prompt = null;
        if (prompt.Inputs(console.Session) is { } inputs)
        {
            foreach (LiveInput input in inputs)
            {
                console.Post(input);
            }
        }
        else
        {
            Prompt = prompt.Kind == PromptKind.Tonight ? prompt : null; // much was typed: it stays, to be mended
            Say(ScreenTexts.Of(ScreenTexts.PromptUnknown, prompt.Text, ScreenTexts.Prompts[prompt.Kind].Example));
        }
    }

    private void TakeSuggestion()
    {
        if (Prompt is null && MarkSuggestions.For(Line.Text, console.Session.Warmup.Choir, console.Session.Marks) is [{ } first, ..])
        {
            Line = Line with { Text = first };
            Keep();
        }
        else
        {
            Say(ScreenTexts.NothingSuggested);
        }
    }

    private void Leave(bool confirmed)
    {
        bool isAtNothing = console.Session is { State: LiveState.Introduce, Step: null };
        Leaves = confirmed || isAtNothing || console.Session.State is LiveState.Ready or LiveState.Finished;
        _leaveAsked = !Leaves;
        if (_leaveAsked)
        {
            Say(ScreenTexts.LeaveAgain);
        }
        else if (Line.IsOpen || Prompt?.Kind == PromptKind.Rehearsal)
        {
            Keep(); // nothing typed is ever lost
        }

        if (isAtNothing)
        {
            console.Post(new LiveInput.Act(LiveAction.End)); // a run without a plan is over, not cut off
        }
    }

    private string? WhyNot(KeyRow row) => (row.Action, row.Command, console.Session.Marks.Count) switch
    {
        ({ } action, _, _) => console.WhyNot(action),
        (_, ScreenCommand.UndoMark, 0) => ScreenTexts.NothingToUndo,
        (_, ScreenCommand.SayPin, _) when !console.Session.Pins.Any() => ScreenTexts.NoPin,
        (_, ScreenCommand.MoveMarkBack, 0) => ScreenTexts.NothingToMove,
        (_, ScreenCommand.Tonight, _) when console.Session.State != LiveState.Ready => ScreenTexts.TonightBefore,
        (_, ScreenCommand.EditPlan, _) when console.Session is not { State: LiveState.Ready, Marks.Count: 0, Warmup: { IsOpen: false, Tonight.IsAsUsual: true }, ChangedOrder.Count: 0 } => ScreenTexts.PlanBefore,
        (_, ScreenCommand.RehearsalMark, _) when console.Session.State != LiveState.Finished => ScreenTexts.RehearsalAfter,
        _ => null,
    };

    private void Say(string text) => _notice = new(text, false, console.Now);
}
