using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Sounding;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;

namespace WarmupConsole.Tests.Sessions.Live;

/// <summary>A director who presses anything at any time, the same way for the same seed.</summary>
internal sealed class RandomDirector(int seed)
{
    private static readonly Warmup[] Warmups =
    [
        LiveFixtures.Whole,
        LiveFixtures.Waiting(LiveFixtures.Whole),
        LiveFixtures.Of(LiveFixtures.Step(LiveFixtures.TooWide), LiveFixtures.Step(LiveFixtures.Scale), LiveFixtures.Step(LiveFixtures.TooWide)),
        LiveFixtures.Of(),
        LiveFixtures.Of(LiveFixtures.Step(LiveFixtures.Breath), LiveFixtures.Step(LiveFixtures.Scale) with { LastTempo = Tempo.FromBeatsPerMinute(97) }),
    ];

    private static readonly string[] Typed = ["a f", "altos flat in E", "b strained", "remember the windows", ""];

    private readonly Random _random = new(seed);

    public Warmup Warmup => Warmups[seed % Warmups.Length];

    /// <summary>Often at once, mostly within a rung, now and then after a minute.</summary>
    public TimeSpan NextGap() => _random.Next(10) switch
    {
        < 2 => TimeSpan.Zero,
        < 9 => TimeSpan.FromTicks(_random.NextInt64(TimeSpan.TicksPerSecond * 6)),
        _ => TimeSpan.FromSeconds(60),
    };

    private static readonly LiveInput[] Named =
    [
        new LiveInput.JumpTo(Pitch.Parse("Eb4")), new LiveInput.JumpTo(Pitch.Parse("A3")), new LiveInput.JumpTo(Pitch.Parse("C8")),
        new LiveInput.Sing(["alto"]), new LiveInput.Sing(["tenor", "bass"]), new LiveInput.Sing([]),
        new LiveInput.SwapOctave("bass"), new LiveInput.SwapOctave("soprano"), new LiveInput.PinMoment(),
        new LiveInput.Accompany(AccompanimentStyle.CueOnly), new LiveInput.Accompany(AccompanimentStyle.Drone),
    ];

    /// <summary>While it follows, mostly notes: the tones of a key's chord, or any.</summary>
    public LiveInput NextInput(LiveSession session, Moment now) => session.Follows && _random.Next(4) > 0
        ? new LiveInput.NoteHeard(session.NextRung is { } next && _random.Next(8) > 0 ? next.Tonic.Midi + new[] { 0, 4, 7, 12 }[_random.Next(4)] : 40 + _random.Next(40))
        : Any(session, now);

    private LiveInput Any(LiveSession session, Moment now) => _random.Next(20) switch
    {
        < 5 => new LiveInput.Act(LiveAction.GoOn),
        < 7 => Named[_random.Next(Named.Length)],
        < 14 => new LiveInput.Act((LiveAction)_random.Next((int)LiveAction.End)),
        14 => new LiveInput.MarkKept(Typed[_random.Next(Typed.Length)], session.AnchorAt(now), session.Pins.FirstOrDefault()?.Id),
        15 => new LiveInput.UndoMark(),
        16 => new LiveInput.MoveMarkBack(),
        17 => new LiveInput.MarksFlushed(session.MarkFacts),
        18 => _random.Next(2) == 0 ? new LiveInput.Trouble("The port is gone.") : new LiveInput.Warning("The disk is full."),
        _ => _random.Next(8) == 0 ? new LiveInput.Act(LiveAction.End) : new LiveInput.TimePassed(),
    };
}
