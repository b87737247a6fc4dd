namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Points that a step has, and for what.</summary>
/// <param name="Points">May be negative.</param>
/// <param name="Words">For what.</param>
/// <param name="IsReason">True when the plan gives it as a reason; else only the explanation tells it.</param>
internal readonly record struct OwnPoints(int Points, string Words, bool IsReason = false);
