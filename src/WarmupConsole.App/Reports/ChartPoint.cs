using WarmupConsole.Sessions.Findings.Estimates;

namespace WarmupConsole.App.Reports;

/// <summary>One rate in a chart.</summary>
/// <param name="Label">Below it, short.</param>
/// <param name="Words">The same for who listens.</param>
/// <param name="Rate">The share with its interval.</param>
/// <param name="IsMeant">True for the one that the finding is about.</param>
internal sealed record ChartPoint(string Label, string Words, Rate Rate, bool IsMeant = false);
