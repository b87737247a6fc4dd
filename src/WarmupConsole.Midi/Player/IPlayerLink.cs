namespace WarmupConsole.Midi.Player;

/// <summary>The way to a player and back. Disposing ends the player, by force if it must be.</summary>
public interface IPlayerLink : IDisposable
{
    Stream ToPlayer { get; }

    Stream FromPlayer { get; }

    /// <summary>The last thing an ended player printed outside the protocol; empty when it printed nothing. May wait a little.</summary>
    string LastWords { get; }

    /// <summary>Ends a player that does not listen, at once and without its last reports. Harmless when it has ended.</summary>
    void Kill();
}
