namespace WarmupConsole.Tui.Screens;

/// <summary>What the first picture adds once it stands: it takes a moment to find out.</summary>
/// <param name="Folder">The choir's folder and the plan's file.</param>
/// <param name="Check">What the check of the plan says.</param>
/// <param name="Heard">What the last weeks showed, the strongest first; may be empty.</param>
/// <param name="Needs">What is to be worked on; may be empty.</param>
public sealed record StartCard(string Folder, string Check, IReadOnlyList<string> Heard, IReadOnlyList<string> Needs);
