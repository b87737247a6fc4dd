using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tui.Keys;

/// <summary>
/// All keys, in the order of the footer. Footer, help page and docs/keys.md come from here. Only keys that every laptop has
/// without Fn; no letters (they write marks), no Esc (it never ends anything).
/// </summary>
public static class KeyTable
{
    public static IReadOnlyList<KeyRow> Rows { get; } =
    [
        Live(LiveAction.GoOn, LineUse.WhenClosed, "Space", "Space"),
        Live(LiveAction.GoOn, LineUse.Always, "↓", "CursorDown"),
        Live(LiveAction.Silence, LineUse.Always, "Tab", "Tab"),
        Screen(ScreenCommand.KeepMark, LineUse.WhenOpen, "Enter", "Enter"),
        Screen(ScreenCommand.EraseLetter, LineUse.WhenOpen, "Bksp", "Backspace"),
        Screen(ScreenCommand.TakeSuggestion, LineUse.WhenOpen, "Ctrl+Y", "Ctrl+Y"),
        Screen(ScreenCommand.Pin, LineUse.WhenClosed, "!", "!"),
        Screen(ScreenCommand.Pin, LineUse.Always, "Ctrl+P", "Ctrl+P"),
        Live(LiveAction.Repeat, LineUse.Always, "↑", "CursorUp"),
        Live(LiveAction.StepBack, LineUse.Always, "←", "CursorLeft"),
        Live(LiveAction.StepOn, LineUse.Always, "→", "CursorRight"),
        Live(LiveAction.Pause, LineUse.WhenClosed, ".", "."),
        Live(LiveAction.OneMoreKey, LineUse.WhenClosed, "Enter", "Enter"),
        Live(LiveAction.TurnRound, LineUse.WhenClosed, ",", ","),
        Live(LiveAction.Slower, LineUse.WhenClosed, "-", "-"),
        Live(LiveAction.Faster, LineUse.WhenClosed, "+", "+", "="),
        Live(LiveAction.TapTempo, LineUse.WhenClosed, "'", "'", "#"),
        Live(LiveAction.RollOrWait, LineUse.WhenClosed, "/", "/", "*"),
        Screen(ScreenCommand.SayPin, LineUse.WhenClosed, ":", ":"),
        Screen(ScreenCommand.UndoMark, LineUse.WhenClosed, "Bksp", "Backspace"),
        Screen(ScreenCommand.MoveMarkBack, LineUse.WhenClosed, ";", ";"),
        Live(LiveAction.Follow, LineUse.Always, "Ctrl+F", "Ctrl+F"),
        Live(LiveAction.TakeCut, LineUse.Always, "Ctrl+T", "Ctrl+T"),
        Live(LiveAction.End, LineUse.Always, "Ctrl+E", "Ctrl+E"),
        Live(LiveAction.JumpToKey, LineUse.Always, "Ctrl+K", "Ctrl+K"),
        Live(LiveAction.InsertNext, LineUse.Always, "Ctrl+N", "Ctrl+N"),
        Live(LiveAction.InsertNow, LineUse.Always, "Ctrl+X", "Ctrl+X"),
        Live(LiveAction.ChooseParts, LineUse.WhenClosed, "(", "("),
        Live(LiveAction.SwapOctave, LineUse.WhenClosed, ")", ")"),
        Live(LiveAction.Accompany, LineUse.Always, "Ctrl+A", "Ctrl+A"),
        Live(LiveAction.CueAgain, LineUse.WhenClosed, "\"", "\""),
        Live(LiveAction.HoldChord, LineUse.WhenClosed, "_", "_"),
        Live(LiveAction.BuildChord, LineUse.WhenClosed, "&", "&"),
        Live(LiveAction.ProofNote, LineUse.WhenClosed, "%", "%"),
        Live(LiveAction.ShorterBreath, LineUse.WhenClosed, "<", "<"),
        Live(LiveAction.LongerBreath, LineUse.WhenClosed, ">", ">"),
        Screen(ScreenCommand.Tonight, LineUse.WhenClosed, "Ctrl+G", "Ctrl+G"),
        Screen(ScreenCommand.EditPlan, LineUse.WhenClosed, "Ctrl+O", "Ctrl+O"),
        Screen(ScreenCommand.RehearsalMark, LineUse.WhenClosed, "Ctrl+R", "Ctrl+R"),
        Screen(ScreenCommand.LearnPedal, LineUse.Always, "Ctrl+L", "Ctrl+L"),
        Screen(ScreenCommand.Leave, LineUse.Always, "Ctrl+Q", "Ctrl+Q"),
        Screen(ScreenCommand.Help, LineUse.WhenClosed, "?", "?"),
    ];

    /// <summary>What a key means while the mark line is open or closed, or null.</summary>
    public static KeyRow? Find(string stroke, bool lineOpen) =>
        Rows.FirstOrDefault(row => row.WorksWith(lineOpen) && row.Strokes.Contains(stroke));

    private static KeyRow Live(LiveAction action, LineUse use, string label, params string[] strokes) =>
        new(strokes, label, ScreenTexts.Actions[action].Brief, ScreenTexts.Actions[action].Words, use, action, null);

    private static KeyRow Screen(ScreenCommand command, LineUse use, string label, params string[] strokes) =>
        new(strokes, label, ScreenTexts.Commands[command].Brief, ScreenTexts.Commands[command].Words, use, null, command);
}
