namespace WarmupConsole.Music.Rhythm;

/// <summary>
/// The bijection between beats and monotonic time: at <see cref="TimeOrigin"/> the beat is <see cref="BeatOrigin"/>,
/// and beats pass at <see cref="Tempo"/>. A change of tempo is a new timeline, so nothing accumulates and nothing drifts.
/// </summary>
public readonly record struct Timeline(Tempo Tempo, Beats BeatOrigin, Moment TimeOrigin)
{
    /// <summary>When a beat falls, rounded up to the next nanosecond.</summary>
    public Moment TimeAt(Beats beat) => new(TimeOrigin.Nanoseconds + Tempo.NanosecondsOf(beat - BeatOrigin));

    /// <summary>The last tick that has come by a moment; <c>BeatAt(TimeAt(b)) == b</c> for every beat.</summary>
    public Beats BeatAt(Moment at) => BeatOrigin + Tempo.BeatsIn(at.Nanoseconds - TimeOrigin.Nanoseconds);

    /// <summary>The timeline that goes on from the present tick at another tempo; the present beat does not move.</summary>
    public Timeline WithTempo(Tempo tempo, Moment now)
    {
        Beats present = BeatAt(now);
        return new(tempo, present, TimeAt(present));
    }
}
