namespace WarmupConsole.Sessions.Planning;

/// <summary>What the check of a plan found.</summary>
/// <param name="Severity">How much it weighs.</param>
/// <param name="Rule">Name of the rule: lower-case words joined by hyphens.</param>
/// <param name="Step">Index of the step from 0, or null when it is about the whole plan.</param>
/// <param name="Sentence">What is wrong, why it matters, what to do.</param>
/// <param name="Field">Name in files of the field that it is about, such as "keys"; empty for the step or the plan as a whole.</param>
public sealed record PlanRemark(PlanSeverity Severity, string Rule, int? Step, string Sentence, string Field = "");
