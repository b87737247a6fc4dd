namespace WarmupConsole.Midi.Ports;

/// <summary>What the system offers with nothing installed: device files on Linux, its own interface on Windows.</summary>
internal static class SystemDevices
{
    /// <summary>What is said when there are none: on Windows no library is missing.</summary>
    internal static string None => OperatingSystem.IsWindows() ? PortTexts.NoneFound : PortTexts.NoLibrary;

    internal static IReadOnlyList<string> Names() => OperatingSystem.IsWindows() ? WinMmDevices.Names() : new RawDevices().Names();

    internal static PortOpening Open(PortChoice choice) => OperatingSystem.IsWindows() ? WinMmDevices.Open(choice) : new RawDevices().Open(choice);
}
