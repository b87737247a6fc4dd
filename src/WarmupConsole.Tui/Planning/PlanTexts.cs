using System.Collections.Frozen;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Sessions.Planning.Editing;

namespace WarmupConsole.Tui.Planning;

/// <summary>Every text of the planning screen.</summary>
public static class PlanTexts
{
    public const string Head = "Plan {0}";
    public const string Minutes = "{0} of {1}:00";
    public const string Changed = "changed";
    public const string NoSteps = "No step yet: + opens the catalogue, and so does a letter.";
    public const string NoKeys = "no key fits";
    public const string KeysOf = "{0}–{1}  {2}";
    public const string OneKey = "{0}  1";
    public const string RoundsOf = "{0} rounds";
    public const string NothingRemarked = "The check has nothing to remark.";
    public const string Remark = "{0}: {1}";
    public const string RemarksElsewhere = "Elsewhere: {0}";
    public const string PutInTitle = "Catalogue: put in behind step {0}";
    public const string ReplaceTitle = "Catalogue: in the place of {0}";
    public const string Filter = "find ";
    public const string FilterHint = "letters of a name, a stage or a purpose";
    public const string NothingFound = "No exercise is like that. Bksp takes letters back.";
    public const string Trains = "Trains: {0}";
    public const string AlsoTrains = "Both train: {0}";
    public const string Caution = "Care: {0}";
    public const string NeedsAStep = "A plan has at least one step: put one in before it is written.";
    public const string NothingToUndo = "There is nothing to undo.";
    public const string NothingChanged = "Nothing was changed: nothing to write.";
    public const string LosesComments = "Writing loses this comment of a changed step: {0} Ctrl+W again writes.";
    public const string LosesMoreComments = "Writing loses {0} comments of changed steps, such as: {1} Ctrl+W again writes.";
    public const string LeaveAgain = "The changes are not written. Ctrl+W writes them; Ctrl+Q again drops them.";
    public const string NothingToHear = "A body or breathing exercise has nothing to hear.";
    public const string NoKeyToHear = "No key fits: there is nothing to hear.";
    public const string HelpTitle = "Keys of the planning screen";
    public const string HelpHint = "A letter opens the catalogue and is the first one looked for. Nothing is written before Ctrl+W. ? closes this page.";
    public const string TooSmall = "Planning needs a larger window: 60 columns and 16 rows.";

    public static FrozenDictionary<PlanSeverity, string> Severities { get; } = new Dictionary<PlanSeverity, string>
    {
        [PlanSeverity.Error] = "error",
        [PlanSeverity.Warning] = "warning",
        [PlanSeverity.Hint] = "hint",
    }.ToFrozenDictionary();

    public static FrozenDictionary<PlanMode, string> Modes { get; } = new Dictionary<PlanMode, string>
    {
        [PlanMode.Steps] = "steps",
        [PlanMode.Fields] = "fields",
        [PlanMode.PutIn] = "putting in",
        [PlanMode.Replace] = "replacing",
    }.ToFrozenDictionary();

    public static FrozenDictionary<StepField, string> Fields { get; } = new Dictionary<StepField, string>
    {
        [StepField.Start] = "first key",
        [StepField.Shape] = "way",
        [StepField.Limit] = "as far as",
        [StepField.Reach] = "reach",
        [StepField.Tolerance] = "tolerance",
        [StepField.MostKeys] = "most keys",
        [StepField.By] = "by half-steps",
        [StepField.Octave] = "takes octave",
        [StepField.Tempo] = "tempo",
        [StepField.Breath] = "breath, beats",
        [StepField.Rounds] = "rounds",
        [StepField.Talk] = "talk",
    }.ToFrozenDictionary();

    public static FrozenDictionary<PlanCommand, (string Brief, string Words)> Commands { get; } = new Dictionary<PlanCommand, (string, string)>
    {
        [PlanCommand.Previous] = ("up", "To the step, field or exercise above."),
        [PlanCommand.Next] = ("down", "To the one below."),
        [PlanCommand.Earlier] = ("earlier", "The step comes one place earlier."),
        [PlanCommand.Later] = ("later", "The step comes one place later."),
        [PlanCommand.TakeOut] = ("take out", "Takes the step out; undo brings it back."),
        [PlanCommand.OpenFields] = ("change", "Keys, reach, tempo, breath and talk of the step."),
        [PlanCommand.Less] = ("less", "The field a notch down, or the choice before."),
        [PlanCommand.More] = ("more", "The field a notch up, or the next choice."),
        [PlanCommand.CloseFields] = ("done", "Back to the list of steps."),
        [PlanCommand.PutIn] = ("put in", "Opens the catalogue; what is taken comes behind this step."),
        [PlanCommand.Replace] = ("replace", "Opens the catalogue with what trains the same; what is taken stands here instead."),
        [PlanCommand.Take] = ("take", "Takes this exercise into the plan."),
        [PlanCommand.EraseLetter] = ("erase", "Takes the last letter back."),
        [PlanCommand.Back] = ("back", "Back to the plan without taking anything."),
        [PlanCommand.Hear] = ("hear", "Plays what is sung in its first key, all parts together."),
        [PlanCommand.Silence] = ("silence", "Everything is silent at once."),
        [PlanCommand.Undo] = ("undo", "Takes the last change back."),
        [PlanCommand.Write] = ("write", "Writes the plan into its file; comments of steps that did not change stay."),
        [PlanCommand.Help] = ("keys", "Shows or hides this page."),
        [PlanCommand.Leave] = ("leave", "Leaves; with changes that are not written it asks for a second press."),
    }.ToFrozenDictionary();
}
