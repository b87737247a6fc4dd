using WarmupConsole.Midi.Player;

namespace WarmupConsole.App;

/// <summary>A piano and how to open its port, once somebody listens to its reports.</summary>
internal sealed record StartedPlayer(IPlayer Player, Action Open);
