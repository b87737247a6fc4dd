namespace WarmupConsole.Tui.Planning;

/// <summary>All keys of the planning screen, in the order of the footer. Footer, help and docs/keys.md come from here. Letters look for an exercise.</summary>
public static class PlanKeys
{
    private static readonly PlanMode[] All = Enum.GetValues<PlanMode>();
    private static readonly PlanMode[] Steps = [PlanMode.Steps];
    private static readonly PlanMode[] Fields = [PlanMode.Fields];
    private static readonly PlanMode[] Catalogue = [PlanMode.PutIn, PlanMode.Replace];

    public static IReadOnlyList<PlanKeyRow> Rows { get; } =
    [
        new(PlanCommand.Previous, All, "↑", ["CursorUp"]),
        new(PlanCommand.Next, All, "↓", ["CursorDown"]),
        new(PlanCommand.Less, Fields, "←", ["CursorLeft"]),
        new(PlanCommand.More, Fields, "→", ["CursorRight"]),
        new(PlanCommand.CloseFields, Fields, "Enter", ["Enter"]),
        new(PlanCommand.Take, Catalogue, "Enter", ["Enter"]),
        new(PlanCommand.EraseLetter, Catalogue, "Bksp", ["Backspace"]),
        new(PlanCommand.Back, Catalogue, "←", ["CursorLeft"]),
        new(PlanCommand.OpenFields, Steps, "Enter", ["Enter"]),
        new(PlanCommand.PutIn, Steps, "+", ["+", "="]),
        new(PlanCommand.Replace, Steps, "/", ["/", "*"]),
        new(PlanCommand.TakeOut, Steps, "Bksp", ["Backspace"]),
        new(PlanCommand.Earlier, Steps, "<", ["<", ","]),
        new(PlanCommand.Later, Steps, ">", [">", "."]),
        new(PlanCommand.Hear, All, "Space", ["Space"]),
        new(PlanCommand.Silence, All, "Tab", ["Tab"]),
        new(PlanCommand.Write, All, "Ctrl+W", ["Ctrl+W"]),
        new(PlanCommand.Undo, All, "Ctrl+U", ["Ctrl+U"]),
        new(PlanCommand.Leave, All, "Ctrl+Q", ["Ctrl+Q"]),
        new(PlanCommand.Help, All, "?", ["?"]),
    ];

    /// <summary>What a key means, or null.</summary>
    public static PlanKeyRow? Find(string stroke, PlanMode mode) => Rows.FirstOrDefault(row => row.Modes.Contains(mode) && row.Strokes.Contains(stroke));
}
