namespace WarmupConsole.Storage.Plans;

/// <summary>The text of a plan after it was edited.</summary>
/// <param name="Yaml">The whole file.</param>
/// <param name="LostComments">Comments of the old text that stand nowhere in the new one.</param>
public sealed record EditedPlan(string Yaml, IReadOnlyList<string> LostComments);
