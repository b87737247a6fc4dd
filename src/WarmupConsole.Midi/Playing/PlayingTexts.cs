using WarmupConsole.Midi.Protocol;

namespace WarmupConsole.Midi.Playing;

/// <summary>What the player says about frames it does not take.</summary>
internal static class PlayingTexts
{
    internal const string PortStuck = "the port's driver takes nothing any more";

    internal static string QueueFull(int offered, int waiting) =>
        $"{offered} notes were refused: {waiting} are waiting already, and {ProtocolConstants.MostQueuedNotes} is the most.";

    internal static string NotForPlayer(Frame frame) => $"A frame of kind {frame.GetType().Name} is not for the player.";

    internal static string WrongVersion(int version) =>
        $"The console speaks version {version} of the player protocol, the player version {ProtocolConstants.Version}. Install both from one package.";

    internal static string NoGreeting(Frame frame) => $"The first frame must be {nameof(Frame.Hello)}, not {frame.GetType().Name}.";
}
