using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Music.Ladders;

/// <summary>The keys of a step, in the order they are sung.</summary>
/// <param name="Rungs">In order; empty when no key fits under the limit.</param>
/// <param name="Reasons">One sentence for each end of the ladder, and for an empty one: why it stops where it stops.</param>
public sealed record KeyLadder(IReadOnlyList<Rung> Rungs, IReadOnlyList<string> Reasons)
{
    /// <summary>How notes and keys are named in its sentences.</summary>
    public NoteNaming Notes { get; init; } = NoteNaming.Scientific;

    /// <summary>Two ladders that would serve better where few keys fit everyone, or null.</summary>
    public LadderOffer? Offer { get; init; }

    /// <summary>How many keys there are when one that comes again counts once.</summary>
    public int DifferentKeys => Rungs.DistinctBy(rung => rung.Tonic.Midi).Count();

    /// <summary>Who enters, leaves or takes another octave, each told one rung ahead; their number is best kept low.</summary>
    public IReadOnlyList<LadderAnnouncement> Announcements => LadderAnnouncement.In(Rungs, Notes);
}
