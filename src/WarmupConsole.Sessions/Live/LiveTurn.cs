using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Live;

/// <summary>One input being worked on: the session as it becomes, the present moment, and the effects gathered so far.</summary>
internal sealed class LiveTurn
{
    private readonly List<LiveEffect> effects = [];

    public LiveSession Session { get; set; } = null!;

    public Moment Now { get; set; }

    /// <summary>What the director named with the action: a key, parts; null where it names nothing.</summary>
    public LiveInput? Asked { get; set; }

    public LiveOutcome Outcome => new(Session, [.. effects]);

    /// <summary>Forgets the input before and begins with another one.</summary>
    public void Begin(LiveSession session, Moment now)
    {
        (Session, Now, Asked) = (session, now, null);
        effects.Clear();
    }

    public void Record(SessionEvent happened) => effects.Add(new LiveEffect.Record(happened));

    /// <summary>Hands over notes, if there are any, whose starts are relative to a beat.</summary>
    public void Play(IReadOnlyList<ScoreNote> notes, Beats at)
    {
        if (notes.Count > 0)
        {
            effects.Add(new LiveEffect.Play(Session.Generation, [.. notes.Select(note => note with { Start = note.Start + at })]));
        }
    }

    /// <summary>Nothing sounds, and nothing handed over before will.</summary>
    public void Silence()
    {
        Session = Session with { Generation = Session.Generation + 1, CueAt = null, NextKeyCued = false, Sounded = null };
        effects.Add(new LiveEffect.Silence(Session.Generation));
    }

    /// <summary>From now on beats count from this one.</summary>
    public void StartTimeline(Beats present) => SetTimeline(new(Session.Tempo, present, Now));

    /// <summary>A timeline for the player alone: the course of the keys does not change.</summary>
    public void Retime(Timeline timeline) => effects.Add(new LiveEffect.SetTimeline(Session.Generation, timeline));

    public void SetTimeline(Timeline timeline)
    {
        Session = Session with { Timeline = timeline };
        effects.Add(new LiveEffect.SetTimeline(Session.Generation, timeline));
        RecordTimeline(timeline);
    }

    public void RecordTimeline(Timeline timeline) => Record(
        new TimelineChanged(timeline.Tempo.MilliBeatsPerMinute, timeline.BeatOrigin.Ticks, timeline.TimeOrigin.Nanoseconds));

    public void Tell(string sentence, bool trouble = false) => Session = Session with { Notice = new(sentence, trouble, Now) };
}
