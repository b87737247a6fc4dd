using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Tests.Sessions.Live;

namespace WarmupConsole.Tests.Sessions.TakeAlong;

/// <summary>
/// What the piano really plays when a director leads a plan, going on by hand at each step: every note with its moments by the
/// timeline that holds at its beat, as seconds since the first note of its step.
/// </summary>
internal static class LedPiano
{
    internal static IReadOnlyList<IReadOnlyList<TimedNote>> Steps(Warmup warmup)
    {
        LiveDriver driver = new(warmup with { Plan = warmup.Plan with { Rolling = true } });
        driver.Act(LiveAction.GoOn);
        List<IReadOnlyList<TimedNote>> steps = [];
        while (driver.Session.State != LiveState.Finished)
        {
            int before = driver.Effects.Count;
            driver.Pass(17).Act(LiveAction.GoOn);
            while (driver.Session.NextWake is { } wake)
            {
                driver.Now = wake;
                driver.Send(new LiveInput.TimePassed());
            }

            steps.Add(Timed([.. driver.Effects.Skip(before)]));
        }

        return [.. steps.Where(step => step.Count > 0)];
    }

    private static TimedNote[] Timed(LiveEffect[] effects)
    {
        Timeline[] timelines = [.. effects.OfType<LiveEffect.SetTimeline>().Select(set => set.Timeline)];
        ScoreNote[] notes = [.. effects.OfType<LiveEffect.Play>().SelectMany(play => play.Notes)];
        Moment first = notes.Length == 0 ? default : At(notes.Min(note => note.Start));
        return [.. notes.Select(note => new TimedNote(note.Midi, (At(note.Start) - first).TotalSeconds, (At(note.Start + note.Length) - first).TotalSeconds, note.Velocity)).Order()];

        Moment At(Beats beat) => timelines.Last(timeline => timeline.BeatOrigin <= beat || timeline == timelines[0]).TimeAt(beat);
    }
}
