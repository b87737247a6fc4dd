using System.Runtime.InteropServices;

namespace WarmupConsole.Midi.Ports;

/// <summary>The part of RtMidi's C interface (rtmidi_c.h, 5.0) that the console uses.</summary>
internal static unsafe partial class RtMidiNative
{
    internal const string Library = "rtmidi";

    /// <summary>RtMidiWrapper. <see cref="Message"/> dangles in 5.0.0 and is never read.</summary>
    [StructLayout(LayoutKind.Sequential)]
    internal struct Device(void* pointer, void* data, byte ok, byte* message)
    {
        internal readonly void* Pointer = pointer;
        internal readonly void* Data = data;
        internal byte Ok = ok;
        internal readonly byte* Message = message;
    }

    [LibraryImport(Library)]
    internal static partial int rtmidi_get_compiled_api(int* apis, uint size);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial Device* rtmidi_out_create(int api, string client);

    [LibraryImport(Library)]
    internal static partial uint rtmidi_get_port_count(Device* device);

    [LibraryImport(Library)]
    internal static partial int rtmidi_get_port_name(Device* device, uint number, byte* buffer, int* length);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial void rtmidi_open_port(Device* device, uint number, string name);

    [LibraryImport(Library)]
    internal static partial int rtmidi_out_send_message(Device* device, byte* message, int length);

    [LibraryImport(Library)]
    internal static partial void rtmidi_close_port(Device* device);

    [LibraryImport(Library)]
    internal static partial void rtmidi_out_free(Device* device);
}
