using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Tests.Simulation;

/// <summary>Presses anything at any time: bursts at one instant, long waits, marks that are good, nonsense or hostile.</summary>
internal sealed class SimulatedDirector(Random random)
{
    private static readonly string[] Typed =
    [
        "a f", "altos flat in E", "tenors and basses sharp at Ab3", "women breathy coming down", "b late", "s s", "remember the windows",
        "", " ", "in in in at at", "a", "flat altos and and the", "x3q;;", "in H# at C99", "\"},{\"crc\":\"00000000\"}",
        "two\nlines\r\n{\"format\":2}", "\0\u0001\u001b[2J\u007f", "\u202eedis gnorw eht no", "♭♯ñé\u0301 日本語 🎹🎶", new string('a', 5000), "\ufeff\u2028",
    ];

    private static readonly LiveInput[] Named =
    [
        new LiveInput.JumpTo(Pitch.Parse("Eb4")), new LiveInput.JumpTo(Pitch.Parse("G4")), new LiveInput.JumpTo(Pitch.Parse("A2")), new LiveInput.JumpTo(Pitch.Parse("C8")),
        new LiveInput.Sing(["alto"]), new LiveInput.Sing(["tenor", "bass"]), new LiveInput.Sing(["nobody"]), new LiveInput.Sing([]),
        new LiveInput.SwapOctave("bass"), new LiveInput.SwapOctave("soprano"), new LiveInput.SwapOctave("nobody"),
        .. PianoData.Styles.Select(style => new LiveInput.Accompany(style.Value)),
    ];

    private MarkAnchor? _typing;
    private int _left = 20 + random.Next(40);
    private int _taps;
    private double _tapSeconds;

    /// <summary>Exercises that may be put in.</summary>
    internal IReadOnlyList<LiveInput> PutIn { get; set; } = [];

    internal bool HasMore => _left > 0;

    /// <summary>Often at once, mostly within a rung, now and then after minutes.</summary>
    internal TimeSpan NextGap() => _taps > 0 ? TimeSpan.FromSeconds(_tapSeconds + (random.NextDouble() / 100)) : random.Next(20) switch
    {
        < 5 => TimeSpan.Zero,
        < 9 => TimeSpan.FromMilliseconds(random.Next(400)),
        < 19 => TimeSpan.FromTicks(random.NextInt64(TimeSpan.TicksPerSecond * 6)),
        _ => TimeSpan.FromSeconds(random.Next(180)),
    };

    internal LiveInput? Next(LiveSession session, Moment now)
    {
        _left--;
        if (_taps > 0)
        {
            _taps--;
            return new LiveInput.Act(LiveAction.TapTempo);
        }

        return random.Next(20) switch
        {
            0 => BeginTapping(),
            < 6 => new LiveInput.Act(LiveAction.GoOn),
            6 => random.Next(8) == 0 && PutIn.Count > 0 ? PutIn[random.Next(PutIn.Count)] : Named[random.Next(Named.Length)],
            < 13 => new LiveInput.Act((LiveAction)random.Next((int)LiveAction.End)),
            < 16 => Mark(session, now),
            16 => random.Next(2) == 0 ? new LiveInput.UndoMark() : new LiveInput.PinMoment(),
            17 => new LiveInput.MoveMarkBack(),
            18 => new LiveInput.Act(LiveAction.OneMoreKey),
            _ => random.Next(12) == 0 ? new LiveInput.Act(LiveAction.End) : new LiveInput.TimePassed(),
        };
    }

    private LiveInput.Act BeginTapping()
    {
        (_taps, _tapSeconds) = (random.Next(10), random.NextDouble() * 2);
        return new(LiveAction.TapTempo);
    }

    /// <summary>The first letter takes the anchor; the mark is kept then or later.</summary>
    private LiveInput.MarkKept? Mark(LiveSession session, Moment now)
    {
        _typing ??= session.AnchorAt(now);
        if (random.Next(3) == 0)
        {
            return null;
        }

        LiveInput.MarkKept kept = new(Typed[random.Next(Typed.Length)], _typing, random.Next(3) == 0 ? random.Next(session.NextMarkId) : null);
        _typing = null;
        return kept;
    }
}
