using WarmupConsole.Sessions.Planning.Choosing;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>A step that the plan may have, made ready.</summary>
/// <param name="Step">As the plan would write it, without reasons.</param>
/// <param name="Ready">Made ready for the choir.</param>
/// <param name="Own">Points of its own, and why.</param>
internal sealed record Offer(PlanStep Step, WarmupStep Ready, IReadOnlyList<OwnPoints> Own)
{
    /// <summary>What the search sees of it.</summary>
    internal required Choice Choice { get; init; }

    /// <summary>True when it takes a part where it is to be spared.</summary>
    internal required bool IsCrossing { get; init; }

    /// <summary>True when it takes such a part beyond what is easy, too.</summary>
    internal required bool IsOverstraining { get; init; }

    /// <summary>Where it stands in a plan; see <see cref="OfferOrder"/>.</summary>
    internal required OfferOrder Order { get; init; }
}
