using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tui.Presentation;

/// <summary>The tour of one minute: a few cards, each with what to do first. Its keys come from the key table.</summary>
public static class TourTexts
{
    public const string Title = "A minute around the console";
    public const string Place = "{0} of {1}";

    /// <summary>Title and text of each card.</summary>
    public static IReadOnlyList<(string Title, string Text)> Cards { get; } =
    [
        ("Going on", $"{Key(LiveAction.GoOn)} does what is next: begins a step, ends the talk, sings the next key, goes on after a hold. The piano gives each key; the large letters name it."),
        ("Silence", $"{Key(LiveAction.Silence)}, and everything is silent at once, whatever else is going on. {Key(LiveAction.Pause)} pauses music and clocks."),
        ("What you hear", $"Letters write it down: a f, then {Key(ScreenCommand.KeepMark)}, is altos flat, in the key sung now. The music goes on. {Key(ScreenCommand.Pin)} only pins the moment; {Key(ScreenCommand.SayPin)} puts it in words later."),
        ("The range board", "A column for each part, pitch upwards: ░ can be sung, ▒ with ease, █ is what this key asks for. It climbs with each key, and your marks stand on it as letters."),
        ("Before and after", $"Before the start {Key(ScreenCommand.Tonight)} tells who is missing, tired or has a cold, and {Key(ScreenCommand.EditPlan)} edits the plan. At the end three lines tell what the rehearsal can build on; {Key(ScreenCommand.RehearsalMark)} notes piece and bars."),
    ];

    /// <summary>How to go on in the tour, and out of it.</summary>
    public static string Keys { get; } = $"{Key(LiveAction.GoOn)} next card   other keys end the tour and act   {Key(ScreenCommand.Help)} all keys at any time";

    private static string Key(LiveAction action) => KeyTable.Rows.First(row => row.Action == action).Label;

    private static string Key(ScreenCommand command) => KeyTable.Rows.First(row => row.Command == command).Label;
}
