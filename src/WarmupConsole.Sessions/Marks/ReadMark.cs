namespace WarmupConsole.Sessions.Marks;

/// <summary>A mark while its line is read.</summary>
/// <param name="Named">Ids of the parts as they were named.</param>
/// <param name="Kind">What they were.</param>
/// <param name="Strength">How much of it, or empty.</param>
/// <param name="Tail">Where; marks joined by "and" may share it.</param>
internal sealed record ReadMark(IReadOnlyList<string> Named, MarkKind Kind, string Strength, MarkTail Tail);
