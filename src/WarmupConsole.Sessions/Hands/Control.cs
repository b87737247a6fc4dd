using System.Globalization;

namespace WarmupConsole.Sessions.Hands;

/// <summary>A key of the piano or a controller that was given a use.</summary>
/// <param name="IsKey">True for a key.</param>
/// <param name="Number">MIDI number of the key (0–127) or of the controller (0–119: those above are orders to the instrument).</param>
/// <param name="IsReversed">True for a pedal that sends its low value when it is down: some do, when they were plugged in late.</param>
public readonly record struct Control(bool IsKey, int Number, bool IsReversed)
{
    /// <summary>Controllers above this one are channel mode messages (MIDI 1.0 Detailed Specification 4.2), which some instruments send unasked.</summary>
    public const int HighestController = 119;

    private const int HighestKey = 127;
    private const string Key = "key ";
    private const string Controller = "controller ";
    private const string Reversed = ", reversed";

    // Controller numbers of the MIDI 1.0 Detailed Specification 4.2, table 3.
    private static readonly (int Number, string Name)[] Pedals = [(64, "sustain"), (66, "sostenuto"), (67, "soft")];

    /// <summary>As settings and screen write it: "sustain", "key 21", "controller 80, reversed".</summary>
    public override string ToString()
    {
        int number = Number;
        string name = IsKey ? Numbered(Key) : Pedals.Where(pedal => pedal.Number == number).Select(pedal => pedal.Name).FirstOrDefault() ?? Numbered(Controller);
        return IsReversed ? name + Reversed : name;
    }

    /// <summary>Reads what <see cref="ToString"/> writes; null for anything else.</summary>
    public static Control? Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        bool isReversed = text.EndsWith(Reversed, StringComparison.OrdinalIgnoreCase);
        string name = (isReversed ? text[..^Reversed.Length] : text).Trim();
        foreach ((int number, string pedal) in Pedals)
        {
            if (name.Equals(pedal, StringComparison.OrdinalIgnoreCase))
            {
                return new(false, number, isReversed);
            }
        }

        return NumberIn(name, Key, HighestKey) is { } key ? isReversed ? null : new(true, key, false)
            : NumberIn(name, Controller, HighestController) is { } controller ? new(false, controller, isReversed)
            : null;
    }

    private string Numbered(string kind) => kind + Number.ToString(CultureInfo.InvariantCulture);

    private static int? NumberIn(string name, string kind, int highest) =>
        name.StartsWith(kind, StringComparison.OrdinalIgnoreCase)
        && int.TryParse(name.AsSpan(kind.Length), NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number <= highest
            ? number
            : null;
}
