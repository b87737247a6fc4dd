using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Planning;
using Transition = Stateless.StateMachine<WarmupConsole.Sessions.Live.LiveState, WarmupConsole.Sessions.Live.LiveTrigger>.Transition;

namespace WarmupConsole.Sessions.Live;

/// <summary>
/// What happens on entering each state of a sung step. Notes go to the player at least a beat before they sound (the chord that
/// answers a key press excepted): a rung's notes when the count-in or the breath before it begins, the cue chords to the next key
/// one beat before the rung ends. Up to then a change of the ladder costs nothing; after it the cued key stands.
/// </summary>
internal sealed class RungLeading(LiveTurn turn, LiveHolds holds, LiveTempo tempo, LiveVoices voices, LiveChords chords)
{
    private static readonly Beats CueLead = Beats.FromBeats(1);

    private LiveSession Session => turn.Session;

    /// <summary>Leads in: to the same rung, or to the next one when the present one had been sung to its end.</summary>
    public void Cue(Transition transition)
    {
        bool wasWhole = transition.Source is LiveState.Breath or LiveState.Wait && transition.Trigger != LiveTrigger.Repeat;
        if (transition is { Source: LiveState.Wait, Trigger: LiveTrigger.RollOrWait })
        {
            turn.Session = Session with { Rolling = true };
        }

        holds.Release();
        turn.Silence();
        if (turn.Asked is LiveInput.JumpTo jump)
        {
            voices.Jump(jump.Tonic, isUnsung: false);
            wasWhole = true;
        }

        int key = Session.RungIndex + (wasWhole ? 1 : 0);
        tempo.MoveTo(key);
        turn.Session = Session with
        {
            RungIndex = key,
            StateStart = -(StepTiming.Cue + StepTiming.CountIn),
            StateEnd = -StepTiming.CountIn,
        };
        turn.StartTimeline(Session.StateStart);
        turn.Record(new LeadInStarted(Session.StepIndex, Session.RungIndex));
        turn.Play(LiveMusic.Tonic(Session), Session.StateStart);
        turn.Play(LiveMusic.CountIn(Session), Session.StateEnd!.Value);
    }

    public void CountIn()
    {
        Lasts(Session.StateEnd!.Value, StepTiming.CountIn);
        if (!Session.ProofAsked)
        {
            turn.Play(LiveMusic.Rung(Session, Session.Rung!), Session.StateEnd!.Value);
        }
    }

    public void Start(Transition transition)
    {
        turn.Session = Session with
        {
            RungIndex = Session.RungIndex + (transition.Source == LiveState.Breath ? 1 : 0),
            NextKeyCued = false,
            WarnedBeyondExtreme = false,
        };
        tempo.MoveTo(Session.RungIndex);
        Lasts(Session.StateEnd!.Value, Session.Step!.Exercise.Pattern!.Length);
        Beats cueAt = Session.StateEnd!.Value - CueLead;
        turn.Session = Session with { CueAt = cueAt < Session.StateStart ? Session.StateStart : cueAt };
        turn.Record(Started(Session));
    }

    /// <summary>A beat before the rung ends: hands over the cue chords to the next key, if one follows by itself.</summary>
    public void CueNextKey()
    {
        turn.Session = Session with { CueAt = null };
        if (Session.Rolling && !Session.ProofAsked && Session.NextRung is not null)
        {
            PlayCueToNextKey(Session.StateEnd!.Value);
        }
    }

    /// <summary>The rung is left, sung to its last beat or not; a hold has recorded its end already.</summary>
    public void Leave(Transition transition)
    {
        if (Session.Hold != Hold.None)
        {
            return;
        }

        bool isWhole = transition.Trigger == LiveTrigger.TimeElapsed;
        turn.Record(new RungEnded(Session.StepIndex, Session.RungIndex, isWhole));
        if (Session.ProofAsked && isWhole)
        {
            chords.GiveProof(Session.Rung!);
        }

        turn.Session = Session with { ProofAsked = false };
    }

    public void Breathe(Transition transition)
    {
        Beats begin = Session.StateEnd ?? Session.StateStart;
        Lasts(begin, Session.NextKeyCued ? Session.CuedBreath : Beats.FromBeats(Session.Step!.Plan.BreathBeats));
        int next = Session.RungIndex + 1; // the cue chords are the first to be heard at the next key's tempo
        if (transition.Source == LiveState.Wait)
        {
            tempo.MoveTo(next);
            turn.Session = Session with { Rolling = Session.Rolling || transition.Trigger == LiveTrigger.RollOrWait };
            turn.StartTimeline(begin);
        }
        else if (tempo.ChangesAt(next))
        {
            tempo.MoveTo(next);
            turn.SetTimeline(Session.Timeline.WithTempo(Session.Tempo, turn.Now));
        }

        if (!Session.NextKeyCued)
        {
            PlayCueToNextKey(begin);
        }

        turn.Play(LiveMusic.Rung(Session, Session.NextRung!), Session.StateEnd!.Value);
    }

    public void Wait() => turn.Session = Session with { StateStart = Session.StateEnd!.Value, StateEnd = null, CueAt = null };

    private void PlayCueToNextKey(Beats at)
    {
        turn.Play(LiveMusic.ToNextKey(Session), at);
        turn.Session = Session with { NextKeyCued = true, CuedBreath = Beats.FromBeats(Session.Step!.Plan.BreathBeats) };
    }

    private void Lasts(Beats start, Beats length) => turn.Session = Session with { StateStart = start, StateEnd = start + length };

    internal static RungStarted Started(LiveSession session)
    {
        Rung rung = session.Rung!;
        RungPart[] singing = [.. rung.Parts.Where(part => part.Sings)];
        return new(
            session.StepIndex,
            session.RungIndex,
            rung.Tonic.ToAscii(),
            rung.Tonic.Midi,
            session.Tempo.MilliBeatsPerMinute,
            [.. singing.Select(part => part.Part.Id)],
            [.. singing.Select(part => part.Span.Low.Midi)],
            [.. singing.Select(part => part.Span.High.Midi)]);
    }
}
