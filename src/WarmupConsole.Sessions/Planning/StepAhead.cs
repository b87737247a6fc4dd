using WarmupConsole.Music.Ladders;

namespace WarmupConsole.Sessions.Planning;

/// <summary>A step that is not over, as it is now.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Step">As planned.</param>
/// <param name="Rungs">Its ladder as it is now.</param>
/// <param name="Standing">As many keys of it stand, whatever is cut: they were sung or cued.</param>
/// <param name="HasBegun">True for the present step.</param>
public sealed record StepAhead(int Number, WarmupStep Step, IReadOnlyList<Rung> Rungs, int Standing, bool HasBegun);
