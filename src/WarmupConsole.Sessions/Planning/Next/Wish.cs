namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>Something that a plan should do.</summary>
/// <param name="Kind">What it comes from.</param>
/// <param name="Points">For the first step that does it, the second and so on.</param>
/// <param name="Words">The reason that a step gets which does it.</param>
/// <param name="IsServedBy">True for a step that does it.</param>
internal sealed record Wish(WishKind Kind, IReadOnlyList<int> Points, string Words, Func<WarmupStep, bool> IsServedBy)
{
    /// <summary>What the step is said to answer, or empty where it answers nothing that anybody noted.</summary>
    internal string Answer { get; init; } = "";

    /// <summary>What it is called in a plan's title, or empty.</summary>
    internal string Title { get; init; } = "";

    /// <summary>What is said when no step does it; empty where nothing needs to be said.</summary>
    internal string Unmet { get; init; } = "";

    /// <summary>How a step does it, added to the reason that it gets; null where that is always the same.</summary>
    internal Func<WarmupStep, string>? How { get; init; }

    /// <summary>False where only the explanation tells of it, not the plan.</summary>
    internal bool IsTold { get; init; } = true;

    /// <summary>What was heard last time, or null; several of a step are told in one reason.</summary>
    internal Need? Heard { get; init; }

    /// <summary>Where its ladder should come to, or null.</summary>
    internal Target? Target { get; init; }

    /// <summary>The reason of a step that does it.</summary>
    internal string WordsOf(WarmupStep step) => How is { } how ? $"{Words}: {how(step)}" : Words;

    /// <summary>The wish as often as the director's focus counts it.</summary>
    internal Wish Times(int times) => this with { Points = [.. Points.Select(points => points * times)] };
}
