namespace WarmupConsole.Sessions.Live;

/// <summary>Every condition of the machine, each with its words. Those on one trigger of one state exclude each other.</summary>
internal static class LiveGuards
{
    public static LiveGuard Always { get; } = new("always", "", _ => true);

    public static LiveGuard Held { get; } = new("held", LiveTexts.MusicRuns, session => session.Hold != Hold.None);

    public static LiveGuard NotHeld { get; } = new("not held", LiveTexts.IsHeld, session => session.Hold == Hold.None);

    public static LiveGuard Paused { get; } = new("paused", LiveTexts.IsNotPaused, session => session.Hold == Hold.Paused);

    public static LiveGuard NotPaused { get; } = new("not paused", LiveTexts.IsHeld, session => session.Hold != Hold.Paused);

    public static LiveGuard HasKeys { get; } = new("keys to sing", LiveTexts.NoPlan, session => session.Rungs.Count > 0);

    public static LiveGuard HasPhases { get; } = new("counted phases", LiveTexts.NoPlan, session => session.Step is { } step && Phases(step) > 0);

    public static LiveGuard HasNothing { get; } = new(
        "no key fits",
        LiveTexts.NoPlan,
        session => session.Step is { } step && session.Rungs.Count == 0 && Phases(step) == 0);

    public static LiveGuard NextStep { get; } = new("another step follows", LiveTexts.LastStep, session => session.NextStepIndex is not null);

    public static LiveGuard LastStep { get; } = new("last step", LiveTexts.NotLastStep, session => !NextStep.Holds(session));

    public static LiveGuard PreviousStep { get; } = new("a step came before", LiveTexts.FirstStep, session => session.PreviousStepIndex is not null);

    public static LiveGuard NextKey { get; } = new("another key follows", LiveTexts.LastKey, session => session.NextRung is not null);

    public static LiveGuard LastKey { get; } = new("last key", LiveTexts.NotLastKey, session => session.NextRung is null);

    public static LiveGuard Rolls { get; } = new("rolling, or the next key was cued", LiveTexts.Waits, session => (session.Rolling && !session.ProofAsked) || session.NextKeyCued);

    public static LiveGuard Waits { get; } = new("waiting", LiveTexts.MusicRuns, session => !Rolls.Holds(session));

    public static LiveGuard SameTempo { get; } = new("same tempo", LiveTexts.Waits, session => session.Tempo == session.Timeline.Tempo);

    public static LiveGuard NewTempo { get; } = new("new tempo", LiveTexts.Waits, session => !SameTempo.Holds(session));

    public static LiveGuard NextPhase { get; } = new("another phase or round follows", LiveTexts.LastPhase, session => !IsLastPhase(session));

    public static LiveGuard LastPhase { get; } = new("last phase", LiveTexts.NotLastPhase, IsLastPhase);

    public static LiveGuard CanGoFaster { get; } = new(
        "a quicker mark on the metronome",
        LiveTexts.Quickest,
        session => session.Step is not null && MetronomeSteps.Faster(session.Tempo) is not null);

    public static LiveGuard CanGoSlower { get; } = new(
        "a slower mark on the metronome",
        LiveTexts.Slowest,
        session => session.Step is not null && MetronomeSteps.Slower(session.Tempo) is not null);

    public static LiveGuard HasTempo { get; } = new("a step", LiveTexts.NoPlan, session => session.Step is not null);

    public static LiveGuard CanTurn { get; } = new("a key to go back to", LiveTexts.NothingToTurnTo, LiveLadder.CanTurn);

    public static LiveGuard NotLeading { get; } = new("nothing leads on", LiveTexts.LeadsOn, session => session.Hold != Hold.None);

    public static LiveGuard Leads { get; } = new("leading", LiveTexts.Follows, session => !session.Follows);

    public static LiveGuard Follows { get; } = new("following", LiveTexts.Leads, session => session.Follows);

    public static LiveGuard HasRungs { get; } = new("a ladder", LiveTexts.NoKeys, session => session.Rungs.Count > 0);

    public static LiveGuard HasSong { get; } = new("something to sing", LiveTexts.NothingToAccompany, session => session.Rungs.Count > 0);

    public static LiveGuard CanBreatheLonger { get; } = new("a longer breath", LiveTexts.BreathLimits, session => Breath(session) is < LiveBreath.Longest);

    public static LiveGuard CanBreatheShorter { get; } = new("a shorter breath", LiveTexts.BreathLimits, session => Breath(session) is > LiveBreath.Shortest);

    /// <summary>Whether it is late or only nothing can go is told by <see cref="LiveCuts.WhyNone"/>.</summary>
    public static LiveGuard HasCut { get; } = new("late, and something to cut", LiveTexts.NotLate, (session, now) => LiveCuts.Offer(session, now) is not null);

    private static readonly LiveGuard[] All =
    [
        Always, Held, NotHeld, Paused, NotPaused, HasKeys, HasPhases, HasNothing, NextStep, LastStep, PreviousStep, NextKey, LastKey,
        Rolls, Waits, SameTempo, NewTempo, NextPhase, LastPhase, CanGoFaster, CanGoSlower, HasTempo, CanTurn, NotLeading, HasRungs, HasSong, CanBreatheLonger, CanBreatheShorter,
        HasCut, Leads, Follows,
    ];

    /// <summary>The sentence that belongs to the words of an unmet guard.</summary>
    public static string RefusalFor(string words) => All.Single(guard => guard.Words == words).Refusal;

    private static int? Breath(LiveSession session) => session.Step is { Exercise.IsSung: true } step ? step.Plan.BreathBeats : null;

    private static int Phases(Planning.WarmupStep step) => step.Exercise.Phases.Count * step.Rounds;

    private static bool IsLastPhase(LiveSession session) => session.Step is not { } step
        || (session.RoundIndex + 1 >= step.Rounds && session.PhaseIndex + 1 >= step.Exercise.Phases.Count);
}
