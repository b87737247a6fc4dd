using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Ports;

namespace WarmupConsole.App.Running;

/// <summary>Opens a piano's port and waits until it is known what came of it.</summary>
internal static class PianoOpening
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    /// <summary>The player's first report, or null when it says nothing.</summary>
    internal static PlayerReport? Open(IPlayer player, PortChoice choice)
    {
        using ManualResetEventSlim told = new();
        PlayerReport? opening = null;
        void Hear(PlayerReport report)
        {
            opening ??= report;
            told.Set();
        }

        player.Reported += Hear;
        player.Open(choice);
        told.Wait(Patience);
        player.Reported -= Hear;
        return opening;
    }
}
