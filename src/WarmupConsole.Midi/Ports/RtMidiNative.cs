using System.Runtime.InteropServices;
using System.Text;

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

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    internal static partial Device* rtmidi_in_create(int api, string client, uint mostWaiting);

    [LibraryImport(Library)]
    internal static partial double rtmidi_in_get_message(Device* device, byte* message, nuint* size);

    [LibraryImport(Library)]
    internal static partial void rtmidi_in_free(Device* device);

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

    /// <summary>The names of what a handle could be opened on, in the library's order.</summary>
    internal static List<string> PortNames(Device* device)
    {
        uint count = rtmidi_get_port_count(device);
        List<string> names = [];
        for (uint i = 0; i < count; i++)
        {
            names.Add(NameOf(device, i));
        }

        return names;
    }

    private static string NameOf(Device* device, uint port)
    {
        int length = 0; // without a buffer the length is told; what is returned says nothing more
        _ = rtmidi_get_port_name(device, port, null, &length);
        byte[] name = new byte[Math.Max(length, 1)];
        fixed (byte* bytes = name)
        {
            _ = rtmidi_get_port_name(device, port, bytes, &length);
        }

        return Encoding.UTF8.GetString(name).TrimEnd('\0');
    }
}
