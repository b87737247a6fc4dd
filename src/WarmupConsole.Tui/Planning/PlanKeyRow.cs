namespace WarmupConsole.Tui.Planning;

/// <summary>One row of the planning screen's key table.</summary>
/// <param name="Command">What it does.</param>
/// <param name="Modes">When it works.</param>
/// <param name="Label">As footer and help write it.</param>
/// <param name="Strokes">The keys.</param>
public sealed record PlanKeyRow(PlanCommand Command, IReadOnlyList<PlanMode> Modes, string Label, IReadOnlyList<string> Strokes)
{
    /// <summary>In a word or two.</summary>
    public string Brief => PlanTexts.Commands[Command].Brief;

    /// <summary>In a sentence.</summary>
    public string Words => PlanTexts.Commands[Command].Words;
}
