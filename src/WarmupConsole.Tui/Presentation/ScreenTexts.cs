using System.Collections.Frozen;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Keys;
using WarmupConsole.Tui.Screens;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Every text of the screen, in one place, so that other languages can come.</summary>
public static class ScreenTexts
{
    public const string SilenceHint = "Tab: silence";
    public const string LargerShowsMore = "a larger window shows more";
    public const string TimeLeft = "{0} left";
    public const string AllSing = "everyone sings";
    public const string Resting = "rests: {0}";
    public const string HelpSaysMore = "? says more.";
    public const string NoTerminal = "This command needs a terminal: run it in one, without redirecting its input or output.";
    public const string Stopped = "The console stopped: {0}";

    public const string SpaceStarts = "Space starts";
    public const string OpenSession = "no plan: an open session";
    public const string OpenSessionHint = "Ctrl+N puts in an exercise. Type to note what you hear; every mark is kept.";
    public const string TonightLabel = "Tonight";
    public const string TonightUsualHint = "as usual; Ctrl+G: heads, colds, energy";
    public const string CheckLabel = "Check";
    public const string HeardLabel = "Heard";
    public const string NeedsLabel = "Needs";
    public const string FolderLabel = "Files";
    public const string NothingHeard = "nothing stands out in the logs";
    public const string NoNeeds = "none written down";
    public const string AndMore = "{0}; and {1} more";
    public const string TonightBefore = "Tonight is told before the start; from here on choose who sings.";
    public const string PlanBefore = "The plan is edited before anything is led or noted; later, put exercises in.";
    public const string RehearsalAfter = "Marks of the rehearsal come after the warm-up; end closes it.";
    public const string PlannedAndTook = "planned   took";
    public const string NeverBegan = "–";
    public const string AheadTitle = "For the rehearsal";
    public const string RehearsalTitle = "In the rehearsal";
    public const string RehearsalHint = "Ctrl+R in the rehearsal: piece, bars, what you hear; it becomes a need.";
    public const string PlannedMinutes = "minutes planned";
    public const string CareTitle = "With care";
    public const string Rolling = "rolling";
    public const string TempoToCome = "→{0:0.#}";
    public const string Following = "following";
    public const string PianoPlays = "piano: {0}";
    public const string Waiting = "waiting at each key";

    public const string Sings = "▶";
    public const string RestsSign = "·";
    public const string Rests = "rests";
    public const string RestsNext = "rests next";
    public const string SingsNext = "sings next";
    public const string LowerNext = "lower next";
    public const string HigherNext = "higher next";

    public const string StepTime = "step";
    public const string WholeTime = "whole";
    public const string TimeOf = "of";
    public const string OnTime = "takes {0}, on time";
    public const string Late = "takes {0} (+{1})";
    public const string CutOffered = "Late by {0}. {1}: {2}.";
    public const string Early = "takes {0} (−{1})";
    public const string NextKey = "next key";
    public const string LastKey = "last key";

    public const string KeyOf = "{0}, key {1} of {2}";
    public const string NextKeyOf = "{0} next, key {1} of {2}";
    public const string KeyCount = ", {0} of {1}";
    public const string RoundOf = "round {0} of {1}";
    public const string Counts = "{0} of {1}";
    public const string OneRound = "1 round";
    public const string Rounds = "{0} rounds";
    public const string TalkOf = "talk {0} of {1}   {2}";
    public const string SpaceCues = "Space: cue and begin";
    public const string SpaceBegins = "Space: begin";
    public const string SpacePassesOver = "Space: pass over this step";
    public const string NoKeyTitle = "This step cannot be led.";
    public const string NothingToLead = "It has nothing to sing or to count.";
    public const string InParts = "in parts; lines of their own: {0}";
    public const string ListenFor = "Listen: ";
    public const string Care = "Care: ";
    public const string WaitsForYou = "waits: Space sings {0}";
    public const string SpaceGoesOn = "Space goes on";
    public const string SpaceGoesOnIn = "Space leads in to {0} again";
    public const string SpaceGoesOnTo = "Space leads in to {0}";

    public const string NoMarks = "no marks yet: type what you hear, such as \"a f\" for altos flat";
    public const string Saved = "saved";
    public const string Saving = "saving…";
    public const string MarkPrompt = "mark ";
    public const string MarkPromptAt = "{0} in {1}, key {2}: ";
    public const string MarkHint = "Enter keeps";
    public const string Suggested = "Enter keeps  Ctrl+Y {0}";
    public const string MarkOfKey = "{0}, key {1}";
    public const string HeldWord = "HELD";
    public const string ReleaseHint = "Space goes on, _ releases";
    public const string PromptUnknown = "Not understood: {0}. {1}";
    public const string MarkWord = "mark";
    public const string PinWord = "pin";
    public const string PinsWait = "{0} without words";
    public const string PinsToSay = "Pins without words: {0}. The key : opens the oldest, and the next after it.";
    public const string NothingSuggested = "Nothing is suggested for these letters.";
    public const string NoPin = "There is no pin without words.";
    public const string NothingToUndo = "There is no mark to take back.";
    public const string NothingToMove = "There is no mark to move.";
    public const string NothingWritten = "Only blanks were written: nothing was kept.";
    public const string UnknownKey = "That sign does nothing here: a mark begins with a letter or a digit. ? shows the keys.";
    public const string LeaveAgain = "The warm-up is still running. Ctrl+Q again leaves; the log is kept.";

    public const string Finished = "DONE";
    public const string Took = "It took {0}; {1} were planned.";
    public const string MarksTitle = "What was heard";
    public const string NoMarksMade = "Nothing was marked.";
    public const string LogTitle = "Log";
    public const string FinishedHint = "Letters still add marks. Ctrl+Q leaves.";
    public const string WhatNext = "What next: warmup review, then warmup plan next.";
    public const string More = "and {0} more";
    public const string MoreBefore = "and {0} before";

    public const string HelpTitle = "Keys";
    public const string HelpHint = "Letters and digits write a mark; these keys drive, also now. (In brackets) at the foot: not at this moment. ? closes this page.";
    public const string HelpLineOpen = "in a mark";
    public const string BoardLegend = "Range board: ░ can be sung, ▒ with ease, █ asked for in this key (┊ the part rests). A letter is a mark, by what was heard (f flat, s sharp, g good); * is a note in other words, ! a pin.";

    public const string CareCard =
        "Start quietly; nobody pushes for a note. Pain: stop. Dizziness: breathe normally and sit down. "
        + "Hoarse for more than about three weeks: see a doctor. "
        + "This is no medical advice; your judgement and that of a licensed professional come first.";

    public const string CareInOneLine = "Pain: stop. Dizziness: breathe normally, sit down.";

    public static FrozenDictionary<LiveState, string> States { get; } = new Dictionary<LiveState, string>
    {
        [LiveState.Ready] = "ready",
        [LiveState.Introduce] = "explain",
        [LiveState.Cue] = "listen",
        [LiveState.CountIn] = "count in",
        [LiveState.Rung] = "sing",
        [LiveState.Breath] = "breathe",
        [LiveState.Wait] = "waiting",
        [LiveState.Follow] = "follows",
        [LiveState.Phase] = "together",
        [LiveState.Finished] = "done",
    }.ToFrozenDictionary();

    /// <summary>In large letters: keep to letters the block font has.</summary>
    public static FrozenDictionary<Hold, string> Holds { get; } = new Dictionary<Hold, string>
    {
        [Hold.None] = "",
        [Hold.Paused] = "PAUSED",
        [Hold.Silenced] = "SILENCE",
    }.ToFrozenDictionary();

    /// <summary>What a prompt asks, and an example.</summary>
    public static FrozenDictionary<PromptKind, (string Ask, string Example)> Prompts { get; } = new Dictionary<PromptKind, (string, string)>
    {
        [PromptKind.Key] = ("to key", "Such as E, or Ab; the nearest one is meant."),
        [PromptKind.Parts] = ("who sings", "Such as a, or s and a, or all."),
        [PromptKind.Octave] = ("octave of", "Such as b, or t and b."),
        [PromptKind.Piano] = ("piano", "1 cue only, 2 melody, 3 chords, 4 broken, 5 bass and chord, 6 drone"),
        [PromptKind.Tonight] = ("tonight", "Part first: t 2, b 3 colds, a tired; alone for everyone: tired. Only Enter: as usual."),
        [PromptKind.Rehearsal] = ("piece, bars, heard", "Such as: Harbour hymn 12-15 a flat at B4"),
        [PromptKind.InsertNext] = ("put in next", "Letters of a name, or a purpose: siren, legato, octave; then its digit, or Enter for the first."),
        [PromptKind.Pedal] = ("pedal for", "1 go on  2 again  3 turn round  4 silence  5 pin  0 forgets all"),
        [PromptKind.InsertNow] = ("put in now", "Letters of a name, or a purpose: siren, legato, octave; then its digit, or Enter for the first."),
    }.ToFrozenDictionary();

    /// <summary>Steps without keys, in large letters.</summary>
    public static FrozenDictionary<Stage, string> LargeStages { get; } = new Dictionary<Stage, string>
    {
        [Stage.Body] = "BODY",
        [Stage.Breathing] = "BREATH",
        [Stage.Humming] = "HUM",
        [Stage.LipTrill] = "TRILL",
        [Stage.Slide] = "SLIDE",
        [Stage.Sung] = "SING",
        [Stage.Settling] = "SETTLE",
    }.ToFrozenDictionary();

    /// <summary>In large letters: keep to letters the block font has.</summary>
    public static FrozenDictionary<BreathAction, string> Phases { get; } = new Dictionary<BreathAction, string>
    {
        [BreathAction.In] = "IN",
        [BreathAction.Hold] = "HOLD",
        [BreathAction.Out] = "OUT",
        [BreathAction.Rest] = "REST",
        [BreathAction.Move] = "MOVE",
    }.ToFrozenDictionary();

    public static FrozenDictionary<LiveAction, (string Brief, string Words)> Actions { get; } = new Dictionary<LiveAction, (string, string)>
    {
        [LiveAction.GoOn] = ("go on", "Starts, ends the talk, sings the next key, or goes on after a hold: whichever is next."),
        [LiveAction.Silence] = ("silence", "Everything is silent at once; the clocks go on."),
        [LiveAction.Pause] = ("pause", "Stops music and clocks, and goes on again."),
        [LiveAction.Repeat] = ("again", "The same key, or the same round, again."),
        [LiveAction.StepBack] = ("back", "Back to the step before."),
        [LiveAction.StepOn] = ("on", "On to the next step."),
        [LiveAction.OneMoreKey] = ("one more key", "One key further than the ladder goes; beyond what a part can sing it warns first."),
        [LiveAction.TurnRound] = ("turn round", "After this key, back towards the first one."),
        [LiveAction.Faster] = ("faster", "A little faster."),
        [LiveAction.Slower] = ("slower", "A little slower."),
        [LiveAction.TapTempo] = ("tap tempo", "Tapped four times or more in a row, it sets that tempo."),
        [LiveAction.RollOrWait] = ("roll or wait", "Switches between going on by itself and waiting at each key."),
        [LiveAction.CueAgain] = ("cue again", "Gives the chord of the key again; while music runs it leads in anew."),
        [LiveAction.LongerBreath] = ("longer breath", "A beat more between the keys of this step."),
        [LiveAction.ShorterBreath] = ("shorter breath", "A beat less between the keys of this step."),
        [LiveAction.HoldChord] = ("hold chord", "Holds the chord of the key until pressed again; music that runs stops."),
        [LiveAction.BuildChord] = ("build chord", "The held chord part by part, from the lowest: one tone more."),
        [LiveAction.ProofNote] = ("proof note", "The piano leaves this key alone and gives its first note after it; where nothing runs, now."),
        [LiveAction.JumpToKey] = ("jump to key", "Asks for a key and leads in to it; the ladder goes on from there."),
        [LiveAction.ChooseParts] = ("who sings", "Asks which parts sing on, or everyone; the ladder goes as far as they go."),
        [LiveAction.SwapOctave] = ("octave", "Asks which part changes its octave, there and back."),
        [LiveAction.Accompany] = ("accompany", "Asks what the piano plays while the choir sings, from the next key of this step on."),
        [LiveAction.InsertNext] = ("put in next", "Looks for an exercise by letters or purpose and puts it in behind this step."),
        [LiveAction.InsertNow] = ("put in now", "The same, and leaves this step for it at once; back leads to this one again."),
        [LiveAction.TakeCut] = ("take cut", "Takes the cut that is offered when the warm-up runs late; every other step stays as it is."),
        [LiveAction.Follow] = ("follow", "The console is silent and follows what is played at the piano, key by key; again, and it leads."),
        [LiveAction.End] = ("end", "Ends the warm-up here; marks can still be added."),
    }.ToFrozenDictionary();

    public static FrozenDictionary<ScreenCommand, (string Brief, string Words)> Commands { get; } = new Dictionary<ScreenCommand, (string, string)>
    {
        [ScreenCommand.KeepMark] = ("keep", "Keeps the mark."),
        [ScreenCommand.EraseLetter] = ("erase", "Takes back the last letter; the line closes when it is empty."),
        [ScreenCommand.TakeSuggestion] = ("take", "Keeps the mark that is suggested at the right."),
        [ScreenCommand.Pin] = ("pin", "Pins this moment, to be put in words later."),
        [ScreenCommand.SayPin] = ("say pin", "Opens a mark on the oldest pin without words."),
        [ScreenCommand.UndoMark] = ("undo mark", "Takes back the newest mark or pin."),
        [ScreenCommand.MoveMarkBack] = ("mark back", "The newest mark was meant for the key before."),
        [ScreenCommand.Tonight] = ("tonight", "Before the start: heads, colds and energy that differ this evening; ladders and findings follow."),
        [ScreenCommand.EditPlan] = ("plan", "Before the start: opens the plan to be edited, and comes back with it."),
        [ScreenCommand.RehearsalMark] = ("rehearsal mark", "After the warm-up: piece, bars and what was heard; it becomes a need for the next plans."),
        [ScreenCommand.LearnPedal] = ("learn pedal", "Asks what a pedal or a key of the piano is to do, then learns the one that is pressed and let go."),
        [ScreenCommand.Help] = ("keys", "Shows or hides this page; the warm-up goes on meanwhile."),
        [ScreenCommand.Leave] = ("leave", "Leaves the console; while the warm-up runs it asks for a second press."),
    }.ToFrozenDictionary();

    /// <summary>Fills the places of a text.</summary>
    public static string Of(string text, params object[] values) =>
        string.Format(System.Globalization.CultureInfo.InvariantCulture, text, values);

    /// <summary>Minutes and seconds: "6:40".</summary>
    public static string Clock(TimeSpan time) => ClockText.Of(time);
}
