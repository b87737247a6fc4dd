namespace WarmupConsole.Sessions.Live;

/// <summary>Stand-in until the live machine lands.</summary>
public static class LiveMachine
{
}
