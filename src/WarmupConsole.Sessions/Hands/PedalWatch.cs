using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Sessions.Hands;

/// <summary>
/// Finds the presses in what comes from a piano. A pedal acts when it goes down, once: half-way pedals that send streams act on
/// crossing the middle and again only after they were near rest; contacts that bounce, keys that are never let go and values that
/// were never different act not at all.
/// </summary>
public sealed record PedalWatch
{
    // A pedal is down from the middle on (MIDI 1.0 Detailed Specification 4.2); it trembles there, so it is up again only well below.
    internal const int Down = 64;
    internal const int Up = 40;
    internal const int Full = 127;

    // Our own choice: contacts bounce for some milliseconds, and nobody treads five times a second on purpose.
    private static readonly TimeSpan Bounce = TimeSpan.FromMilliseconds(80);
    private static readonly TimeSpan BetweenPresses = TimeSpan.FromMilliseconds(200);

    private PedalWatch(Pedals pedals, IReadOnlyDictionary<PedalUse, ControlState> states) => (Pedals, States) = (pedals, states);

    public Pedals Pedals { get; }

    private IReadOnlyDictionary<PedalUse, ControlState> States { get; }

    /// <summary>A watch that has seen nothing yet.</summary>
    public static PedalWatch For(Pedals pedals) => new(pedals, new Dictionary<PedalUse, ControlState>());

    /// <summary>The watch after a touch, and the use that was asked for by it, if any.</summary>
    public (PedalWatch Next, PedalUse? Pressed) After(Touch touch, Moment now)
    {
        if (Pedals.Find(touch.IsKey, touch.Number) is not { } bound)
        {
            return (this, null);
        }

        ControlState before = States.GetValueOrDefault(bound.Use);
        if (IsDown(touch, bound.Control, before.IsDown) is not { } isDown || isDown == before.IsDown)
        {
            return (this, null);
        }

        bool isPress = isDown && !IsTooSoon(before, now) && (before.IsDown is not null || touch.IsKey || Value(touch, bound.Control) == Full);
        ControlState after = new(isDown, now, isPress ? now : before.Pressed);
        return (new(Pedals, new Dictionary<PedalUse, ControlState>(States) { [bound.Use] = after }), isPress ? bound.Use : null);
    }

    private static bool? IsDown(Touch touch, Control control, bool? before) => touch.IsKey ? touch.Value > 0
        : Value(touch, control) >= Down ? true
        : Value(touch, control) <= Up ? false
        : before;

    private static int Value(Touch touch, Control control) => control.IsReversed ? Full - touch.Value : touch.Value;

    private static bool IsTooSoon(ControlState before, Moment now) => now - before.Changed < Bounce || now - before.Pressed < BetweenPresses;
}
