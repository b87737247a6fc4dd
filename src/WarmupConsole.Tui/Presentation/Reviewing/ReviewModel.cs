using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings;
using WarmupConsole.Sessions.Findings.Practice;

namespace WarmupConsole.Tui.Presentation.Reviewing;

/// <summary>Everything that the review shows.</summary>
/// <param name="Choir">As it is now.</param>
/// <param name="Head">Which weeks are looked back on, in a sentence.</param>
/// <param name="LastSession">The last session in words, line by line; may be empty.</param>
/// <param name="Findings">Strongest first.</param>
/// <param name="Ranges">Limits that could move.</param>
/// <param name="Heat">Parts against pitches.</param>
/// <param name="Practised">Purposes and times.</param>
/// <param name="LeftOut">What was not weighed, in sentences.</param>
public sealed record ReviewModel(
    Choir Choir,
    string Head,
    string LastSession,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<RangeAdvice> Ranges,
    IReadOnlyList<HeatRow> Heat,
    Practised Practised,
    IReadOnlyList<string> LeftOut);
