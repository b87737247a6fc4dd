using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Sessions.Review;

/// <summary>
/// Where a run is, as its log tells it. Folding the events of a run gives the facts that the running session shows, at any moment:
/// so a run that was cut off goes on where it was.
/// </summary>
public sealed record SessionFacts
{
    /// <summary>Nothing has happened.</summary>
    public static SessionFacts None { get; } = new();

    /// <summary>True once a step was introduced.</summary>
    public bool HasBegun { get; init; }

    /// <summary>True once the warm-up was finished or ended.</summary>
    public bool HasEnded { get; init; }

    /// <summary>Index of the step, from 0.</summary>
    public int StepIndex { get; init; }

    /// <summary>Index of the rung led in to, sung, or just sung, from 0.</summary>
    public int RungIndex { get; init; }

    /// <summary>How far that rung has come.</summary>
    public RungProgress Progress { get; init; }

    /// <summary>The step's ladder as it is now: MIDI numbers of the tonics.</summary>
    public IReadOnlyList<int> Keys { get; init; } = [];

    /// <summary>The tempo in thousandths of a beat a minute; 0 before the first step, and where the log ends before it tells the tempo of a step.</summary>
    public int MilliBpm { get; init; }

    /// <summary>The key, from 0, whose share of a tempo that changes from key to key that is: after a whole key a new tempo is the next one's.</summary>
    public int TempoKey { get; init; }

    /// <summary>Who sings in the step, where that was changed.</summary>
    public Voicing Voicing { get; init; } = Voicing.AsPlanned;

    /// <summary>Beats of breath in the step where they were changed; 0 as planned.</summary>
    public int BreathBeats { get; init; }

    /// <summary>What the piano plays in the step where it was changed; null as planned, and for a style that this version does not know.</summary>
    public AccompanimentStyle? Style { get; init; }

    /// <summary>The order of the steps by their numbers, where it was changed; empty as planned.</summary>
    public IReadOnlyList<int> Order { get; init; } = [];

    /// <summary>What differs this evening.</summary>
    public Tonight Tonight { get; init; } = Tonight.AsUsual;

    /// <summary>The steps whose way back was cut, as it ran late.</summary>
    public Shortened Shortened { get; init; } = Shortened.None;

    /// <summary>True while somebody else plays and the console only follows.</summary>
    public bool Follows { get; init; }

    /// <summary>What holds the music, if anything does.</summary>
    public Hold Hold { get; init; }

    /// <summary>In the order in which they were made or put in words, without those taken back.</summary>
    public IReadOnlyList<MarkFact> Marks { get; init; } = [];

    /// <summary>The id the next mark gets; ids of marks taken back are not used again.</summary>
    public int NextMarkId { get; init; } = 1;

    /// <summary>The facts after all these events, in order.</summary>
    public static SessionFacts Fold(IEnumerable<SessionEvent> events) => events.Aggregate(None, (facts, happened) => facts.After(happened));

    /// <summary>The facts after one more event; kinds that change none of them are passed over.</summary>
    public SessionFacts After(SessionEvent happened) => happened switch
    {
        MarkMade or MarkUndone or MarkMoved or MarkWorded => AfterMark(happened),
        StepStarted step => this with
        {
            HasBegun = true,
            StepIndex = step.Step,
            RungIndex = 0,
            Keys = step.Keys,
            Progress = RungProgress.NotBegun,
            MilliBpm = 0,
            TempoKey = 0,
            Voicing = Voicing.AsPlanned,
            BreathBeats = 0,
            Style = null,
        },
        StepsOver => None with { Tonight = Tonight, Marks = Marks, NextMarkId = NextMarkId, Order = Order, Shortened = Shortened, Follows = Follows, Hold = Hold },
        PartsChosen or OctaveChanged or BreathChanged or AccompanimentChanged or OrderChanged or CutTaken or FollowChanged or TonightTold => AfterChange(happened),
        LeadInStarted leadIn => this with { RungIndex = leadIn.Rung, TempoKey = leadIn.Rung, Progress = RungProgress.Begun },
        RungStarted rung => this with { RungIndex = rung.Rung, TempoKey = rung.Rung, Progress = RungProgress.Begun },
        RungEnded { Whole: true } => this with { Progress = RungProgress.Over },
        LadderChanged ladder => this with { Keys = ladder.Keys },
        TimelineChanged timeline => this with
        {
            MilliBpm = timeline.MilliBpm,
            TempoKey = RungIndex + (Progress == RungProgress.Over ? 1 : 0),
        },
        HoldChanged hold => this with { Hold = HoldText.Read(hold.Hold) },
        RunResumed resumed => this with
        {
            StepIndex = resumed.Step,
            RungIndex = resumed.Rung,
            Hold = Hold.None,
            Progress = Progress == RungProgress.Over ? RungProgress.Begun : Progress,
        },
        RunEnded => this with { HasEnded = true, Progress = RungProgress.NotBegun },
        _ => this,
    };

    private SessionFacts AfterChange(SessionEvent happened) => happened switch
    {
        PartsChosen chosen => this with { Voicing = Voicing with { Only = chosen.Parts } },
        OctaveChanged swapped => this with { Voicing = Voicing.With(swapped.Part, swapped.Octaves) },
        TonightTold told => this with { Tonight = TonightFact.Read(told) },
        OrderChanged order => this with { Order = order.Steps },
        CutTaken { Keys: > 0 } cut => this with { Shortened = Shortened.With(cut.Step, cut.Keys) },
        FollowChanged follow => this with { Follows = follow.Follows },
        BreathChanged breath => this with { BreathBeats = breath.Beats },
        AccompanimentChanged piano => this with { Style = PianoData.Find(piano.Style) },
        _ => this,
    };

    private SessionFacts AfterMark(SessionEvent happened) => happened switch
    {
        MarkMade made => this with
        {
            Marks = [.. Marks, new(made.Id, made.Step, made.Rung, made.Raw, made.Nanoseconds)],
            NextMarkId = made.Id + 1,
        },
        MarkUndone undone => this with { Marks = [.. Marks.Where(mark => mark.Id != undone.Id)] },
        MarkMoved moved => this with
        {
            Marks = [.. Marks.Select(mark => mark.Id == moved.Id ? mark with { Step = moved.Step, Rung = moved.Rung } : mark)],
        },
        MarkWorded worded when Marks.FirstOrDefault(mark => mark.Id == worded.Id) is { } pin => this with
        {
            Marks = [.. Marks.Where(mark => mark != pin), pin with { Raw = worded.Raw }],
        },
        _ => this,
    };
}
