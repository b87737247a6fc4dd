namespace WarmupConsole.Midi.Player;

/// <summary>The way to a player and back. Disposing ends the player, by force if it must be.</summary>
public interface IPlayerLink : IDisposable
{
    Stream ToPlayer { get; }

    Stream FromPlayer { get; }

    /// <summary>The last thing the player printed outside the protocol; empty when it printed nothing.</summary>
    string LastWords { get; }
}
