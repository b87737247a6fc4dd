using System.Reflection;
using System.Runtime.InteropServices;

namespace WarmupConsole.Midi.Ports;

/// <summary>Finds the RtMidi library. Version 5 or later only: older ones have another signature behind one of the names.</summary>
internal static class RtMidiLibrary
{
    private static readonly string[] Candidates = OperatingSystem.IsWindows() ? ["rtmidi.dll", "librtmidi.dll"]
        : OperatingSystem.IsMacOS() ? ["librtmidi.dylib", "/opt/homebrew/lib/librtmidi.dylib", "/usr/local/lib/librtmidi.dylib"]
        : ["librtmidi.so.7", "librtmidi.so.6"];

    private static readonly Lazy<nint> Handle = new(Load);

    internal static bool IsPresent => Handle.Value != 0;

    private static nint Load()
    {
        Assembly assembly = typeof(RtMidiLibrary).Assembly;
        foreach (string candidate in Candidates)
        {
            if (NativeLibrary.TryLoad(candidate, assembly, null, out nint handle))
            {
                NativeLibrary.SetDllImportResolver(assembly, (name, _, _) => name == RtMidiNative.Library ? handle : 0);
                return handle;
            }
        }

        return 0;
    }
}
