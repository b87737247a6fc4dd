using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Live;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Where the beat is in the present state: index from 0, of so many.</summary>
public readonly record struct BeatCount(int Index, int Total)
{
    private const int MostBeats = 600;

    /// <summary>Null when nothing is timed: the state waits for the director, or a hold stops it.</summary>
    public static BeatCount? At(LiveSession session, Moment now)
    {
        if (session.StateEnd is not { } end || session.Hold != Hold.None)
        {
            return null;
        }

        int total = (int)Math.Clamp(Whole(end - session.StateStart + new Beats(Beats.TicksPerBeat - 1)), 1, MostBeats);
        long index = Whole(session.Timeline.BeatAt(now) - session.StateStart);
        return new((int)Math.Clamp(index, 0, total - 1), total);
    }

    private static long Whole(Beats beats) => beats.Ticks / Beats.TicksPerBeat;
}
