namespace WarmupConsole.Midi.Player;

/// <summary>What the director is told about the player process.</summary>
internal static class PlayerTexts
{
    internal const string Stuck = "The player did not answer any more and was ended.";

    internal static string Ended(string lastWords) => lastWords.Length == 0
        ? "The player ended by itself."
        : $"The player ended by itself ({lastWords}).";

    internal static string NotUnderstood(string reason) => $"The player's reports cannot be read: {reason}";

    internal static string StartsAgain(string sentence) => $"{sentence} It is started again: go on leads in to the same key.";

    internal static string GivenUp(string sentence) =>
        $"{sentence} It was started {RestartLimit.Most} times within a minute and ended each time. The run goes on without sound; leave and start the console again to hear it.";

    internal static string NotStarted(string reason) =>
        $"The player could not be started: {reason} The run goes on without sound; leave and start the console again to hear it.";
}
