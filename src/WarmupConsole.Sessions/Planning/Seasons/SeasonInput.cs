using WarmupConsole.Sessions.Choirs;

namespace WarmupConsole.Sessions.Planning.Seasons;

/// <summary>What the calendar is made from.</summary>
/// <param name="Concerts">Past and coming.</param>
/// <param name="Plans">All dated plans.</param>
/// <param name="Led">Days on which a warm-up was led, with its minutes.</param>
/// <param name="Today">The day it is looked at.</param>
public sealed record SeasonInput(IReadOnlyList<Concert> Concerts, IReadOnlyList<Plan> Plans, IReadOnlyList<(DateOnly Day, int Minutes)> Led, DateOnly Today);
