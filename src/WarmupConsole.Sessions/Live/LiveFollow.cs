using WarmupConsole.Music.Hearing;
using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Events;
using Transition = Stateless.StateMachine<WarmupConsole.Sessions.Live.LiveState, WarmupConsole.Sessions.Live.LiveTrigger>.Transition;

namespace WarmupConsole.Sessions.Live;

/// <summary>
/// The console follows: somebody else plays, the console says nothing and moves on when it hears the next key. A key that is begun by
/// hand stands until another one is heard; it counts as sung once it was heard, or once the director goes on from it.
/// </summary>
internal sealed class LiveFollow(LiveTurn turn, LiveHolds holds, LiveTempo tempo, LiveVoices voices)
{
    private const int Octave = 12;

    private LiveSession Session => turn.Session;

    /// <summary>Takes a note; the key that was recognised by it and is to begin, or null.</summary>
    public Pitch? Hear(int midi)
    {
        bool listens = Session is { Follows: true, Hold: Hold.None, State: LiveState.Introduce or LiveState.Follow, Rungs.Count: > 0 };
        if (!listens || Session.Sounded?.Notes.Contains(midi) == true)
        {
            return null;
        }

        (KeyHearing next, int? heard) = (Session.Hearing ?? KeyHearing.Begin(Session.Step!.Exercise)).After(midi, Expected());
        turn.Session = Session with { Hearing = next };
        return heard is { } tonic ? Begin(tonic) : null;
    }

    public void Enter(Transition transition)
    {
        holds.Release();
        if (transition.Source is not (LiveState.Introduce or LiveState.Follow))
        {
            turn.Silence();
        }

        Switch(transition, follows: true);
        bool isHeard = transition.Trigger == LiveTrigger.KeyHeard;
        int key = KeyAfter(transition);
        tempo.MoveTo(key);
        KeyHearing ear = Session.Hearing ?? KeyHearing.Begin(Session.Step!.Exercise);
        turn.Session = Session with
        {
            RungIndex = key,
            StateStart = Beats.Zero,
            StateEnd = null,
            CueAt = null,
            NextKeyCued = false,
            ProofAsked = false,
            WarnedBeyondExtreme = false,
            KeyIsHeard = isHeard,
            Hearing = isHeard || transition.Source == LiveState.Introduce ? ear : ear.InKey(),
        };
        turn.StartTimeline(Beats.Zero);
        turn.Record(RungLeading.Started(Session));
    }

    public void Leave(Transition transition) => turn.Record(new RungEnded(
        Session.StepIndex,
        Session.RungIndex,
        Session.KeyIsHeard ? transition.Trigger != LiveTrigger.Repeat : transition.Trigger == LiveTrigger.GoOn));

    /// <summary>Where nothing is led at the moment: from the next key on.</summary>
    public void Toggle() => Set(!Session.Follows);

    /// <summary>Follow mode begins or ends with a move to another state, if that is what moves.</summary>
    public void Switch(Transition transition, bool follows)
    {
        if (transition.Trigger == LiveTrigger.Follow)
        {
            Set(follows);
        }
    }

    private void Set(bool follows)
    {
        turn.Session = Session with { Follows = follows, Hearing = null };
        turn.Record(new FollowChanged(follows));
        turn.Tell(follows ? LiveTexts.Follows : LiveTexts.Leads);
    }

    /// <summary>Null when the present key was only confirmed, or when nobody can sing the one heard.</summary>
    private Pitch? Begin(int tonic)
    {
        if (Session is { State: LiveState.Follow, KeyIsHeard: false } && Class(Session.Rung!) == tonic)
        {
            turn.Session = Session with { KeyIsHeard = true };
            return null;
        }

        Pitch key = Nearest(tonic);
        if (voices.WhyNotJump(key) is { } reason)
        {
            turn.Session = Session with { Hearing = null };
            turn.Tell(reason);
            return null;
        }

        return key;
    }

    private int KeyAfter(Transition transition)
    {
        bool isFirst = transition.Source == LiveState.Introduce;
        int after = isFirst ? 0 : Session.RungIndex + 1;
        if (turn.Asked is LiveInput.JumpTo { Tonic: var tonic })
        {
            if (transition.Trigger == LiveTrigger.KeyHeard && !isFirst && tonic.Midi == Session.Rung!.Tonic.Midi)
            {
                return Session.RungIndex;
            }

            if (after >= Session.Rungs.Count || Session.Rungs[after].Tonic.Midi != tonic.Midi)
            {
                voices.Jump(tonic, isUnsung: isFirst);
            }

            return after;
        }

        bool moves = transition.Trigger == LiveTrigger.GoOn || transition.Source is LiveState.Breath or LiveState.Wait;
        return isFirst ? 0 : Math.Min(Session.RungIndex + (moves ? 1 : 0), Session.Rungs.Count - 1);
    }

    private KeyExpectation Expected() => Session.State == LiveState.Introduce
        ? new(null, Class(Session.Rungs[0]), null)
        : new(Class(Session.Rung!), Session.NextRung is { } next ? Class(next) : null, Session.RungIndex > 0 ? Class(Session.Rungs[Session.RungIndex - 1]) : null);

    /// <summary>The key of the ladder that is next if it has this name, else the nearest octave of it.</summary>
    private Pitch Nearest(int tonic)
    {
        Rung? next = Session.State == LiveState.Introduce ? Session.Rungs[0] : Session.NextRung;
        int present = Session.Rung!.Tonic.Midi;
        int above = (((tonic - present) % Octave) + Octave) % Octave;
        return next is not null && Class(next) == tonic ? next.Tonic
            : KeySpelling.TonicFor(present + (above > Octave / 2 ? above - Octave : above), Session.Step!.Exercise.Mode);
    }

    private static int Class(Rung rung) => rung.Tonic.Midi % Octave;
}
