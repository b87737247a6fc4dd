using System.Text.RegularExpressions;

namespace WarmupConsole.Midi.Ports;

/// <summary>Comparing port names.</summary>
public static partial class PortNames
{
    /// <summary>The kernel's loopback port: it leads to no instrument.</summary>
    private const string Loopback = "Midi Through";

    /// <summary>The name without ALSA's "client:port" numbers at its end, which change when a cable is put in again.</summary>
    public static string WithoutNumbers(string name) => Numbers().Replace(name, "");

    /// <summary>The index of the port to open, or −1: the one with exactly the name wanted before one that only contains it.</summary>
    public static int Find(IReadOnlyList<string> names, PortChoice choice)
    {
        for (int i = 0; i < names.Count; i++)
        {
            if (choice.Kind == PortChoiceKind.Named && WithoutNumbers(names[i]) == WithoutNumbers(choice.Name))
            {
                return i;
            }
        }

        for (int i = 0; i < names.Count; i++)
        {
            if (Matches(names[i], choice))
            {
                return i;
            }
        }

        return -1;
    }

    /// <summary>True when a port has another one's name: the two cannot be told apart once their numbers have changed.</summary>
    public static bool AreAlike(IReadOnlyList<string> names, string found) => names.Count(name => WithoutNumbers(name) == WithoutNumbers(found)) > 1;

    internal static bool IsLoopback(string name) => name.Contains(Loopback, StringComparison.OrdinalIgnoreCase);

    private static bool Matches(string name, PortChoice choice) => choice.Kind switch
    {
        PortChoiceKind.First => !IsLoopback(name),
        PortChoiceKind.Named => WithoutNumbers(name).Contains(WithoutNumbers(choice.Name), StringComparison.OrdinalIgnoreCase),
        _ => false,
    };

    [GeneratedRegex(@" \d+:\d+$")]
    private static partial Regex Numbers();
}
