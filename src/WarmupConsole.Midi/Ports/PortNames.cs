using System.Text.RegularExpressions;

namespace WarmupConsole.Midi.Ports;

/// <summary>Comparing port names.</summary>
public static partial class PortNames
{
    /// <summary>The kernel's loopback port: it leads to no instrument.</summary>
    private const string Loopback = "Midi Through";

    /// <summary>The name without ALSA's "client:port" numbers at its end, which change when a cable is put in again.</summary>
    public static string WithoutNumbers(string name) => Numbers().Replace(name, "");

    /// <summary>The index of the port to open, or −1.</summary>
    public static int Find(IReadOnlyList<string> names, PortChoice choice)
    {
        for (int i = 0; i < names.Count; i++)
        {
            if (Matches(names[i], choice))
            {
                return i;
            }
        }

        return -1;
    }

    private static bool Matches(string name, PortChoice choice) => choice.Kind switch
    {
        PortChoiceKind.First => !name.Contains(Loopback, StringComparison.OrdinalIgnoreCase),
        PortChoiceKind.Named => WithoutNumbers(name).Contains(WithoutNumbers(choice.Name), StringComparison.OrdinalIgnoreCase),
        _ => false,
    };

    [GeneratedRegex(@" \d+:\d+$")]
    private static partial Regex Numbers();
}
