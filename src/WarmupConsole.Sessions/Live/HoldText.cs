namespace WarmupConsole.Sessions.Live;

/// <summary>Holds as the session log names them.</summary>
internal static class HoldText
{
    public static string Write(Hold hold) => hold switch
    {
        Hold.Paused => "paused",
        Hold.Silenced => "silenced",
        _ => "none",
    };

    public static Hold Read(string text) => text switch
    {
        "paused" => Hold.Paused,
        "silenced" => Hold.Silenced,
        _ => Hold.None,
    };
}
