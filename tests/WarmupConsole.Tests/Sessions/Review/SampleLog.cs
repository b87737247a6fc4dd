using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Tests.Sessions.Review;

/// <summary>A log written by hand: say what happened, and after how many seconds.</summary>
internal sealed class SampleLog
{
    private readonly List<SessionRecord> records = [];
    private DateTimeOffset wall = new(2027, 2, 16, 19, 30, 0, TimeSpan.FromHours(1));
    private Moment moment = new(5_000_000_000);
    private int epoch = 1;

    internal IReadOnlyList<SessionRecord> Records => records;

    internal SampleLog Started() => After(0, new RunStarted("0.1.0", "The Lantern Quay Singers", "2027-02-16.yaml", "", "", ""));

    internal SampleLog After(int seconds, SessionEvent happened)
    {
        wall += TimeSpan.FromSeconds(seconds);
        moment += TimeSpan.FromSeconds(seconds);
        records.Add(new(records.Count + 1, wall, epoch, moment, happened));
        return this;
    }

    /// <summary>A whole rung of ten seconds with all parts in their places; men an octave below.</summary>
    internal SampleLog Rung(int step, int rung, string tonic, int span) => Begin(step, rung, tonic, span).After(10, new RungEnded(step, rung, true));

    internal SampleLog Begin(int step, int rung, string tonic, int span)
    {
        int midi = Pitch.Parse(tonic).Midi;
        int[] low = [midi, midi, midi - 12, midi - 12];
        return After(2, new RungStarted(step, rung, tonic, midi, 80_000, ["soprano", "alto", "tenor", "bass"], low, [.. low.Select(note => note + span)]));
    }

    internal SampleLog Mark(SampleMark mark) => After(
        1,
        new MarkMade(mark.Id, mark.Step, mark.Rung, mark.Raw, mark.Parts, mark.Kind, mark.Key, mark.Named, mark.Pitch, mark.Place, moment.Nanoseconds, mark.Strength));

    /// <summary>The machine was off for that long; its monotonic clock starts anew.</summary>
    internal SampleLog Restarted(int seconds, SessionEvent resumed)
    {
        (epoch, moment) = (epoch + 1, new(1_000));
        wall += TimeSpan.FromSeconds(seconds);
        return After(0, resumed);
    }
}
