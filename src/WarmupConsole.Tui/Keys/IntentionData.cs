using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Keys;

/// <summary>The twenty commonest things to mean while a warm-up runs (our own estimate), with what each costs. The keys come from the key table.</summary>
public static class IntentionData
{
    /// <summary>The commonest first.</summary>
    public static IReadOnlyList<Intention> Rows { get; } =
    [
        new("Go on: begin, sing the next key, go on after a hold", [Key(LiveAction.GoOn)]),
        new("Silence, now", [Key(LiveAction.Silence)]),
        new("The same key again", [Key(LiveAction.Repeat)]),
        new("On to the next exercise", [Key(LiveAction.StepOn)]),
        new("Pin this moment, words later", [Key(ScreenCommand.Pin)]),
        new("Mark what is heard most often from a part: its letter, and take what is suggested", ["a", Key(ScreenCommand.TakeSuggestion)]),
        new("Mark anything else in short: altos late", ["a", "Space", "l", Key(ScreenCommand.KeepMark)]),
        new("The mark was meant for the key before", [Key(ScreenCommand.MoveMarkBack)]),
        new("Take the mark back", [Key(ScreenCommand.UndoMark)]),
        new("Pause", [Key(LiveAction.Pause)]),
        new("One more key", [Key(LiveAction.OneMoreKey)]),
        new("Turn round", [Key(LiveAction.TurnRound)]),
        new("A little slower, a little faster", [Key(LiveAction.Slower)]),
        new("Wait at each key, or roll again", [Key(LiveAction.RollOrWait)]),
        new("The chord again", [Key(LiveAction.CueAgain)]),
        new("Hold the chord, and release it", [Key(LiveAction.HoldChord)]),
        new("Sing this key alone and prove the pitch", [Key(LiveAction.ProofNote)]),
        new("Only the altos", [Key(LiveAction.ChooseParts), "a", Key(ScreenCommand.KeepMark)]),
        new("To a certain key", [Key(LiveAction.JumpToKey), "e", Key(ScreenCommand.KeepMark)]),
        new("Put an exercise in next, by three letters", [Key(LiveAction.InsertNext), "s", "i", "r", Key(ScreenCommand.KeepMark)]),
    ];

    private static string Key(LiveAction action) => KeyTable.Rows.First(row => row.Action == action).Label;

    private static string Key(ScreenCommand command) => KeyTable.Rows.First(row => row.Command == command).Label;
}
