using WarmupConsole.Music.Ladders;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Live;

/// <summary>What the piano gives by hand: the cue again, a chord or tone that is held, a starting note to prove the pitch by.</summary>
internal sealed class LiveChords(LiveTurn turn, LiveHolds holds)
{
    private const int Velocity = 60; // to sing with, not against

    private static readonly Beats UntilReleased = Beats.FromBeats(1200);
    private static readonly Beats ProofLength = Beats.FromBeats(3);

    private LiveSession Session => turn.Session;

    /// <summary>The chord of the key to be sung next, with nothing behind it.</summary>
    public void GiveCue() => Give(LiveMusic.TonicOf(Session, NextHeard), untilReleased: false);

    /// <summary>The whole chord, held; or the end of what is held.</summary>
    public void HoldOrRelease()
    {
        if (Session.Sounded is { UntilReleased: true })
        {
            turn.Silence();
        }
        else
        {
            Begin([.. HeldChord.Of(NextHeard).Select(tone => tone.Midi)]);
        }
    }

    /// <summary>From the lowest part upwards one tone more of the chord.</summary>
    public void Build()
    {
        IReadOnlyList<(Part Part, int Midi)> chord = HeldChord.Of(NextHeard);
        int built = Session.Sounded is { UntilReleased: true } sounded ? sounded.Notes.Count : 0;
        if (built >= chord.Count)
        {
            turn.Tell(LiveTexts.ChordIsWhole);
            return;
        }

        if (built == 0)
        {
            Begin([chord[0].Midi]);
        }
        else
        {
            Add(chord[built].Midi);
        }

        turn.Tell(LiveTexts.ToneHeld(chord[built].Part.Name));
    }

    /// <summary>Where nothing runs, the note that the key begins on, now. While a key is led in to or sung, the piano leaves it alone, gives the note at its end, and waits.</summary>
    public void Prove()
    {
        if (Session.StateEnd is null || Session.Hold != Hold.None)
        {
            Give(Proof(Session.Rung!), untilReleased: false);
            return;
        }

        turn.Session = Session with { ProofAsked = true };
        if (Session.State != LiveState.Cue)
        {
            turn.Silence();
            turn.Retime(Session.Timeline);
        }

        turn.Tell(LiveTexts.AloneToTheEnd);
    }

    /// <summary>At the end of a key that was sung alone.</summary>
    public void GiveProof(Rung sung)
    {
        IReadOnlyList<ScoreNote> notes = Proof(sung);
        turn.Play(notes, Session.StateEnd!.Value);
        turn.Session = Session with { ProofAsked = false, Sounded = new(Midis(notes), false, Session.Timeline) };
    }

    private Rung NextHeard => Session.State is LiveState.Breath or LiveState.Wait ? Session.NextRung ?? Session.Rung! : Session.Rung!;

    /// <summary>Music that runs is held first: the clocks go on.</summary>
    private void Begin(IReadOnlyList<int> notes)
    {
        if (Session is { Hold: Hold.None, StateEnd: not null })
        {
            holds.Silence();
        }

        Give([.. notes.Select(midi => new ScoreNote(midi, Beats.Zero, UntilReleased, Velocity))], untilReleased: true);
    }

    private void Add(int midi)
    {
        Sounded sounded = Session.Sounded!;
        turn.Play([new ScoreNote(midi, sounded.Timeline.BeatAt(turn.Now), UntilReleased, Velocity)], Beats.Zero);
        turn.Session = Session with { Sounded = sounded with { Notes = [.. sounded.Notes, midi] } };
    }

    /// <summary>On a timeline of its own: where nothing runs the next lead-in or breath starts another one.</summary>
    private void Give(IReadOnlyList<ScoreNote> notes, bool untilReleased)
    {
        turn.Silence();
        Timeline timeline = new(Session.Tempo, Beats.Zero, turn.Now);
        turn.Retime(timeline);
        turn.Play(notes, Beats.Zero);
        turn.Session = Session with { Sounded = new(Midis(notes), untilReleased, timeline) };
    }

    private IReadOnlyList<ScoreNote> Proof(Rung rung)
    {
        Degree first = Session.Step!.Exercise.Pattern!.Notes.FirstOrDefault(note => note.Degree is not null)?.Degree ?? Degree.Tonic;
        int written = rung.Tonic.Midi + ModeData.IntervalOf(rung.Mode, first).Semitones;
        int[] octaves = [.. rung.Parts.Where(part => part.Sings).Select(part => part.Octaves).DefaultIfEmpty(0).Distinct()];
        return [.. octaves.Select(octave => new ScoreNote(written + (12 * octave), Beats.Zero, ProofLength, Velocity)).DistinctBy(note => note.Midi)];
    }

    private static int[] Midis(IReadOnlyList<ScoreNote> notes) => [.. notes.Select(note => note.Midi)];
}
