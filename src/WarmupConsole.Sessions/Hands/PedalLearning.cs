namespace WarmupConsole.Sessions.Hands;

/// <summary>
/// Waits for the control that is to have a use: pressed, and let go. A pedal that knows only up and down begins with its value when
/// down; one that sends every value on its way begins near the value at rest. So the first change tells which way round it works.
/// </summary>
/// <param name="Use">What it is for.</param>
/// <param name="Known">Where controllers stood when it began: what does not move is not meant.</param>
public sealed record PedalLearning(PedalUse Use, IReadOnlyDictionary<int, int> Known)
{
    /// <summary>The first control that moved.</summary>
    private Control? Candidate { get; init; }

    /// <summary>True once it was down.</summary>
    private bool WasDown { get; init; }

    /// <summary>The same after a touch, and the control once it is let go.</summary>
    public (PedalLearning Next, Control? Learnt) After(Touch touch)
    {
        if (Candidate is not { } candidate)
        {
            return (Begin(touch), null);
        }

        if ((candidate.IsKey, candidate.Number) != (touch.IsKey, touch.Number))
        {
            return (this, null);
        }

        bool isDown = touch.IsKey ? touch.Value > 0 : Value(touch, candidate) >= PedalWatch.Down;
        bool isUp = touch.IsKey ? touch.Value == 0 : Value(touch, candidate) <= PedalWatch.Up;
        return (this with { WasDown = WasDown || isDown }, WasDown && isUp ? candidate : null);
    }

    private PedalLearning Begin(Touch touch)
    {
        bool isMeant = touch.IsKey ? touch.Value > 0 : touch.Number <= Control.HighestController && !(Known.TryGetValue(touch.Number, out int value) && value == touch.Value);
        if (!isMeant)
        {
            return this;
        }

        bool isSwitch = touch.Value is 0 or PedalWatch.Full;
        bool isHigh = touch.Value >= PedalWatch.Down;
        return this with { Candidate = new(touch.IsKey, touch.Number, !touch.IsKey && isHigh != isSwitch), WasDown = touch.IsKey || isSwitch };
    }

    private static int Value(Touch touch, Control control) => control.IsReversed ? PedalWatch.Full - touch.Value : touch.Value;
}
