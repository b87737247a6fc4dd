namespace WarmupConsole.App.Running;

/// <summary>What a director asked of <c>warmup run</c>.</summary>
/// <param name="Plan">The plan's file, or null.</param>
/// <param name="Choir">The choir's folder, or null.</param>
/// <param name="Port">The port's name, or null.</param>
/// <param name="Files">What the player keeps.</param>
/// <param name="Open">True for a run without any plan.</param>
/// <param name="Resume">Whether to go on with a run that was cut off; null asks.</param>
internal sealed record RunRequest(string? Plan, string? Choir, string? Port, PlayerFiles Files, bool Open, bool? Resume)
{
    /// <summary>True to give the tour, seen or not.</summary>
    public bool Tour { get; init; }
}
