namespace WarmupConsole.Midi.Listening;

/// <summary>A millisecond between two looks at an input that cannot tell when something comes.</summary>
internal static class ShortWait
{
    private static readonly ManualResetEvent Never = new(false);

    internal static void Pass() => Never.WaitOne(1);
}
