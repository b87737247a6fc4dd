using Terminal.Gui.Input;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Editing;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Planning;

/// <summary>What the planning screen remembers, and what keys do with it. One thread.</summary>
public sealed class PlanControl
{
    private const int MostLetters = 40;

    private readonly IPlanDesk _desk;
    private readonly Stack<PlanDraft> _before = [];
    private PlanDraft _draft;
    private PlanDraft _written;
    private PlanMode _mode;
    private StepField _field;
    private string _letters = "";
    private int _chosen;
    private string _word = "";
    private bool _helpOpen;
    private PlanCommand? _confirms;
    private IReadOnlyList<PlanRemark> _remarks;

    public PlanControl(IPlanDesk desk)
    {
        ArgumentNullException.ThrowIfNull(desk);
        _desk = desk;
        (_draft, _written) = (desk.Start, desk.Start);
        _remarks = desk.Check(_draft);
    }

    /// <summary>True once the screen is to be left.</summary>
    public bool Leaves { get; private set; }

    public PlanModel Model() => new(_draft, _mode, _desk.Name)
    {
        IsChanged = IsChanged,
        Remarks = _remarks,
        Field = _field,
        Letters = _letters,
        Found = IsInCatalogue ? Found() : [],
        Chosen = _chosen,
        Offered = Offered(),
        Word = _word,
        Sound = _desk.Sound,
        HelpOpen = _helpOpen,
    };

    public void Press(Key key)
    {
        ArgumentNullException.ThrowIfNull(key);
        if (key.IsModifierOnly)
        {
            return;
        }

        PlanCommand? asked = _confirms;
        (_confirms, _word) = (null, "");
        if (PlanKeys.Find(KeyStroke.Name(key), _mode) is { } row)
        {
            Do(row.Command, asked == row.Command);
        }
        else if (KeyStroke.Printed(key) is { } printed && KeyStroke.OpensLine(printed))
        {
            Type(printed);
        }
    }

    /// <summary>Pasted text is looked for as if it had been typed.</summary>
    public void Paste(string text) => Type(text);

    private bool IsInCatalogue => _mode is PlanMode.PutIn or PlanMode.Replace;

    private bool IsChanged => _draft.Warmup.Plan.Steps.SequenceEqual(_written.Warmup.Plan.Steps) == false;

    private void Type(string text)
    {
        _helpOpen = false;
        _mode = IsInCatalogue ? _mode : PlanMode.PutIn;
        (_letters, _chosen) = (string.Concat(CellText.Split(_letters + text.ReplaceLineEndings(" ")).Take(MostLetters)), 0);
    }

    private void Do(PlanCommand command, bool confirmed)
    {
        switch (command)
        {
            case PlanCommand.Previous or PlanCommand.Next:
                Step(command == PlanCommand.Next ? 1 : -1);
                break;
            case PlanCommand.Hear:
                Hear();
                break;
            case PlanCommand.Silence:
                _desk.Silence();
                break;
            case PlanCommand.Undo:
                Undo();
                break;
            case PlanCommand.Write:
                Write(confirmed);
                break;
            case PlanCommand.Leave:
                Leave(confirmed);
                break;
            case PlanCommand.Help:
                _helpOpen = !_helpOpen;
                break;
            default:
                Edit(command);
                break;
        }
    }

    /// <summary>Commands that change the plan.</summary>
    private void Edit(PlanCommand command)
    {
        switch (command)
        {
            case PlanCommand.Earlier or PlanCommand.Later:
                Change(_draft.Move(command == PlanCommand.Later ? 1 : -1));
                break;
            case PlanCommand.Less or PlanCommand.More:
                Change(_draft.Change(_field, command == PlanCommand.More ? 1 : -1));
                break;
            case PlanCommand.TakeOut:
                Change(_draft.Remove());
                break;
            default:
                Turn(command);
                break;
        }
    }

    /// <summary>Commands that lead from one mode to another.</summary>
    private void Turn(PlanCommand command)
    {
        _helpOpen = false;
        switch (command)
        {
            case PlanCommand.OpenFields when _draft.Step is { } step:
                (_mode, _field) = (PlanMode.Fields, StepFields.Of(step).Contains(_field) ? _field : StepFields.Of(step)[0]);
                break;
            case PlanCommand.PutIn or PlanCommand.Replace:
                (_mode, _letters, _chosen) = (command == PlanCommand.Replace && _draft.Step is not null ? PlanMode.Replace : PlanMode.PutIn, "", 0);
                break;
            case PlanCommand.EraseLetter:
                (_letters, _chosen) = (string.Concat(CellText.Split(_letters).SkipLast(1)), 0);
                break;
            case PlanCommand.Take:
                Take();
                break;
            case PlanCommand.Back or PlanCommand.CloseFields:
                (_mode, _letters) = (PlanMode.Steps, "");
                break;
        }
    }

    private void Step(int by)
    {
        if (IsInCatalogue)
        {
            _chosen = Math.Clamp(_chosen + by, 0, Math.Max(0, Found().Count - 1));
        }
        else if (_mode == PlanMode.Fields && _draft.Step is { } step)
        {
            IReadOnlyList<StepField> fields = StepFields.Of(step);
            _field = fields[Math.Clamp(fields.Index().First(field => field.Item == _field).Index + by, 0, fields.Count - 1)];
        }
        else
        {
            _draft = _draft.Select(_draft.Selected + by);
        }
    }

    private void Change(PlanDraft next)
    {
        if (!ReferenceEquals(next, _draft))
        {
            _before.Push(_draft);
            Show(next);
        }
    }

    private void Show(PlanDraft draft) => (_draft, _remarks) = (draft, _desk.Check(draft));

    private void Undo()
    {
        if (_before.TryPop(out PlanDraft? before))
        {
            Show(before);
            _mode = _mode == PlanMode.Fields && _draft.Step is { } step && StepFields.Of(step).Contains(_field) ? PlanMode.Fields : PlanMode.Steps;
        }
        else
        {
            _word = PlanTexts.NothingToUndo;
        }
    }

    /// <summary>Of the catalogue: what the letters find; without letters everything, or what could stand in the step's place.</summary>
    private IReadOnlyList<Exercise> Found()
    {
        IReadOnlyList<Exercise> all = _mode == PlanMode.Replace && _draft.Step is { } step ? Alternatives.Of(step.Exercise, _desk.Exercises) : _desk.Exercises;
        return _letters.Trim().Length == 0 ? all : ExerciseFinder.Find(_letters, all, all.Count);
    }

    private WarmupStep? Offered() => IsInCatalogue && Found() is { Count: > 0 } found ? WarmupBuilder.Alone(_draft.Warmup.Choir, found[Math.Min(_chosen, found.Count - 1)]) : null;

    private void Take()
    {
        if (Offered()?.Exercise is { } exercise)
        {
            Change(_mode == PlanMode.Replace ? _draft.Replace(exercise) : _draft.Insert(exercise));
            (_mode, _letters) = (PlanMode.Steps, "");
        }
    }

    private void Hear()
    {
        switch (IsInCatalogue ? Offered() : _draft.Step)
        {
            case null:
                break;
            case { Exercise.IsSung: false }:
                _word = PlanTexts.NothingToHear;
                break;
            case { Ladder.Rungs.Count: 0 }:
                _word = PlanTexts.NoKeyToHear;
                break;
            case { } step:
                _desk.Play(step);
                break;
        }
    }

    private void Write(bool confirmed)
    {
        IReadOnlyList<string> lost = IsChanged && _draft.Step is not null ? _desk.LostComments(_draft) : [];
        if (!IsChanged || _draft.Step is null)
        {
            _word = IsChanged ? PlanTexts.NeedsAStep : PlanTexts.NothingChanged;
        }
        else if (lost.Count > 0 && !confirmed)
        {
            _confirms = PlanCommand.Write;
            _word = lost.Count == 1 ? ScreenTexts.Of(PlanTexts.LosesComments, lost[0]) : ScreenTexts.Of(PlanTexts.LosesMoreComments, lost.Count, lost[0]);
        }
        else
        {
            (bool isSaved, _word) = _desk.Save(_draft);
            _written = isSaved ? _draft : _written;
        }
    }

    private void Leave(bool confirmed)
    {
        Leaves = confirmed || !IsChanged;
        if (!Leaves)
        {
            (_confirms, _word) = (PlanCommand.Leave, PlanTexts.LeaveAgain);
        }
    }
}
