namespace WarmupConsole.Midi.Sound;

/// <summary>The system's loudspeaker, where it can be reached.</summary>
internal static class AudioOutputs
{
    internal static IAudioOutput? TryOpen() =>
        OperatingSystem.IsLinux() ? AlsaOutput.TryOpen()
        : OperatingSystem.IsWindows() ? WaveOutput.TryOpen()
        : OperatingSystem.IsMacOS() ? AudioQueueOutput.TryOpen()
        : null;
}
