using WarmupConsole.Music.Ladders;

namespace WarmupConsole.Sessions.Live;

/// <summary>A ladder as the session log keeps it.</summary>
internal static class SessionKeys
{
    /// <summary>The tonics as MIDI numbers, in order.</summary>
    public static IReadOnlyList<int> Of(IReadOnlyList<Rung> rungs) => [.. rungs.Select(rung => rung.Tonic.Midi)];
}
