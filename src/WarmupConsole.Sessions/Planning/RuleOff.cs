namespace WarmupConsole.Sessions.Planning;

/// <summary>A rule that the director switches off in one plan.</summary>
/// <param name="Rule">Its name, one of <see cref="PlanCheck.RuleNames"/>.</param>
/// <param name="Because">Why; it is shown wherever the plan is checked.</param>
public sealed record RuleOff(string Rule, string Because);
