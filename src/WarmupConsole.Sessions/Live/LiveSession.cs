using WarmupConsole.Music.Hearing;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Sessions.Live;

/// <summary>The whole state of a running session. A value: <see cref="LiveMachine"/> makes the next one.</summary>
public sealed record LiveSession
{
    /// <summary>What is led.</summary>
    public required Warmup Warmup { get; init; }

    /// <summary>Where it is.</summary>
    public LiveState State { get; init; } = LiveState.Ready;

    /// <summary>What holds it there, if anything does.</summary>
    public Hold Hold { get; init; }

    /// <summary>True to go on by itself after each breath; false to wait at every key.</summary>
    public bool Rolling { get; init; } = true;

    /// <summary>True while somebody else plays and the console only follows.</summary>
    public bool Follows { get; init; }

    /// <summary>What was heard of the present step, or null.</summary>
    public KeyHearing? Hearing { get; init; }

    /// <summary>True once the present key was recognised in what is played.</summary>
    public bool KeyIsHeard { get; init; }

    /// <summary>True once a step was introduced.</summary>
    public bool HasBegun { get; init; }

    /// <summary>Index of the present step, from 0.</summary>
    public int StepIndex { get; init; }

    /// <summary>The present step's ladder as it is now: live changes re-make it.</summary>
    public IReadOnlyList<Rung> Rungs { get; init; } = [];

    /// <summary>Index of the present rung, from 0; in <see cref="LiveState.Breath"/> and <see cref="LiveState.Wait"/> the one just sung.</summary>
    public int RungIndex { get; init; }

    /// <summary>Index of the present round of a body or breathing exercise, from 0.</summary>
    public int RoundIndex { get; init; }

    /// <summary>Index of the present phase in its round, from 0.</summary>
    public int PhaseIndex { get; init; }

    /// <summary>The present tempo; each step begins at its own.</summary>
    public Tempo Tempo { get; init; } = Tempo.FromBeatsPerMinute(80);

    /// <summary>The key whose share of a tempo that changes from key to key <see cref="Tempo"/> holds, from 0.</summary>
    public int TempoKey { get; init; }

    /// <summary>The taps of the tempo that is wanted, as far as they belong together.</summary>
    public TempoTaps Taps { get; init; } = TempoTaps.None;

    /// <summary>Valid while the state is timed.</summary>
    public Timeline Timeline { get; init; }

    /// <summary>The beat at which the present state began.</summary>
    public Beats StateStart { get; init; }

    /// <summary>The beat at which the present state is over, or null when it waits for the director.</summary>
    public Beats? StateEnd { get; init; }

    /// <summary>
    /// The beat at which the cue chords to the next key are handed to the player, one beat before they sound; null when that
    /// is done or not due.
    /// </summary>
    public Beats? CueAt { get; init; }

    /// <summary>True once the next key was handed over: it then stands, whatever is changed behind it.</summary>
    public bool NextKeyCued { get; init; }

    /// <summary>The breath that the cue chords to the next key were handed over for.</summary>
    public Beats CuedBreath { get; init; }

    /// <summary>Beats of breath where the director changed it in this step, 1–8; null as planned.</summary>
    public int? BreathBeats { get; init; }

    /// <summary>Who sings in this step, where the director changed that.</summary>
    public Voicing Voicing { get; init; } = Voicing.AsPlanned;

    /// <summary>What the piano plays where the director changed it in this step; null as planned.</summary>
    public AccompanimentStyle? Style { get; init; }

    /// <summary>What the piano gave by hand since the last silence, or null.</summary>
    public Sounded? Sounded { get; init; }

    /// <summary>True for a key that is sung alone, with its first note to follow.</summary>
    public bool ProofAsked { get; init; }

    /// <summary>Rises with every silence; whatever carries an older one is never played.</summary>
    public long Generation { get; init; } = 1;

    /// <summary>Time spent in step and warm-up.</summary>
    public LiveClocks Clocks { get; init; } = new(TimeSpan.Zero, TimeSpan.Zero, default, false);

    /// <summary>In the order in which they were made or put in words, without those taken back.</summary>
    public IReadOnlyList<LiveMark> Marks { get; init; } = [];

    /// <summary>The pinned moments that have no words yet, the oldest first.</summary>
    public IEnumerable<LiveMark> Pins => Marks.Where(mark => mark.IsPin);

    /// <summary>The marks of the line that was typed last; several when the line held several. They are confirmed, moved and taken back together.</summary>
    public IReadOnlyList<LiveMark> NewestLine =>
        [.. Marks.Where(mark => (mark.Anchor.At, mark.Content.Raw) == (Marks[^1].Anchor.At, Marks[^1].Content.Raw))];

    /// <summary>What was marked in the rehearsal behind the warm-up, in order.</summary>
    public IReadOnlyList<RehearsalMark> RehearsalMarks { get; init; } = [];

    /// <summary>The id the next mark gets.</summary>
    public int NextMarkId { get; init; } = 1;

    /// <summary>How many facts about marks (made, moved, taken back) this run has recorded: the log confirms them by this number.</summary>
    public int MarkFacts { get; init; }

    /// <summary>What the director was last told; null once an action acted.</summary>
    public Notice? Notice { get; init; }

    /// <summary>True after a first "one more key" beyond a part's extreme range: a second one obeys.</summary>
    public bool WarnedBeyondExtreme { get; init; }

    /// <summary>The step now led or introduced; the first one before the start, the last led one at the end; null without a plan. With the breath as it is now.</summary>
    public WarmupStep? Step => StepIndex >= Warmup.Steps.Count ? null
        : BreathBeats is { } beats ? Warmup.Steps[StepIndex] with { Plan = Warmup.Steps[StepIndex].Plan with { BreathBeats = beats } }
        : Warmup.Steps[StepIndex];

    /// <summary>What the piano plays in the present step from the next key on; as usual where there is none.</summary>
    public PianoPart Piano => Step is not { } step ? PianoPart.Usual
        : Style is { } style ? Warmup.PianoOf(step) with { Style = style }
        : Warmup.PianoOf(step);

    /// <summary>The steps whose way back was cut, as it ran late.</summary>
    public Shortened Shortened { get; init; } = Shortened.None;

    /// <summary>The numbers of the steps in the order in which they are led, where exercises were put in or left out; empty as planned.</summary>
    public IReadOnlyList<int> ChangedOrder { get; init; } = [];

    /// <summary>The numbers of the steps in the order in which they are led. A step keeps its number, whatever is put in before it.</summary>
    public IReadOnlyList<int> Order => ChangedOrder.Count > 0 ? ChangedOrder : [.. Enumerable.Range(0, Warmup.Steps.Count)];

    /// <summary>The place of the present step in the order, from 0; −1 where there is none.</summary>
    public int Place => ChangedOrder.Count > 0 ? Order.ToList().IndexOf(StepIndex) : StepIndex < Warmup.Steps.Count ? StepIndex : -1;

    /// <summary>The step that comes next: in a run without a plan none, after the last one that was put in; null at the end of a plan.</summary>
    public int? NextStepIndex => Place + 1 < Order.Count && Place >= 0 ? Order[Place + 1] : Warmup.IsOpen && Place >= 0 ? Warmup.Steps.Count : null;

    /// <summary>The step before, or null.</summary>
    public int? PreviousStepIndex => Place > 0 ? Order[Place - 1] : Place < 0 && Order.Count > 0 ? Order[^1] : null;

    /// <summary>The ladder that a step begins with.</summary>
    public IReadOnlyList<Rung> LadderOf(int step) => [.. Warmup.Steps[step].Ladder.Rungs.Take(Shortened.KeysOf(step, int.MaxValue))];

    /// <summary>What a step takes that has not begun.</summary>
    public TimeSpan Lasts(int step) =>
        Shortened.Keys.ContainsKey(step) ? Warmup.Steps[step].Lasts(LadderOf(step).Count) : Warmup.Steps[step].Planned;

    /// <summary>The rung now sung, cued or just sung, or null.</summary>
    public Rung? Rung => RungIndex < Rungs.Count ? Rungs[RungIndex] : null;

    /// <summary>The rung after it, or null when it is the last.</summary>
    public Rung? NextRung => RungIndex + 1 < Rungs.Count ? Rungs[RungIndex + 1] : null;

    /// <summary>When <see cref="LiveInput.TimePassed"/> is due, or null when only the director can go on.</summary>
    public Moment? NextWake => Hold == Hold.None && (CueAt ?? StateEnd) is { } beat ? Timeline.TimeAt(beat) : null;

    /// <summary>What a mark typed now refers to.</summary>
    public MarkAnchor AnchorAt(Moment now) => new(StepIndex, RungIndex, Rung?.Tonic, now);
}
