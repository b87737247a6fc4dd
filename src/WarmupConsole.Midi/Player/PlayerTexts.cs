namespace WarmupConsole.Midi.Player;

/// <summary>What the director is told about the player process.</summary>
internal static class PlayerTexts
{
    internal const string Stuck = "The player does not take notes any more and was ended. The run goes on without sound; start again to hear it.";

    internal static string Ended(string lastWords) => lastWords.Length == 0
        ? "The player ended by itself. The run goes on without sound; start again to hear it."
        : $"The player ended by itself ({lastWords}). The run goes on without sound; start again to hear it.";

    internal static string NotUnderstood(string reason) => $"The player's reports cannot be read: {reason} The run goes on without sound; start again to hear it.";
}
