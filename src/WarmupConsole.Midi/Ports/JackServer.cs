using System.Runtime.InteropServices;

namespace WarmupConsole.Midi.Ports;

/// <summary>
/// The names of JACK's MIDI inputs, and whether its server still lives: through RtMidi a dead server looks like a living one, until
/// sending blocks for ever. Used by one thread.
/// </summary>
internal sealed unsafe partial class JackServer
{
    /// <summary>JACK among the APIs of RtMidi.</summary>
    internal const int Api = 3;

    private const string Library = "libjack.so.0";
    private const string ClientName = "warmup watch";
    private const string MidiType = "8 bit raw midi";
    private const int StartNoServer = 1;
    private const nuint TakesInput = 1;

    // Of the one client there is at a time; the library calls back on a thread of its own.
    private static int _deaths;
    private readonly bool _isInstalled = NativeLibrary.TryLoad(Library, out _);
    private void* _client;
    private int _deathsBefore;

    /// <summary>False when the server's end was not seen to be told by this library; then the names are asked for elsewhere.</summary>
    internal bool IsInstalled => _isInstalled;

    /// <summary>How often a server has ended so far. What was opened before the last time must not be touched any more, not even to close it.</summary>
    internal static int Deaths => Volatile.Read(ref _deaths);

    internal bool IsConnected => _client is not null && Deaths == _deathsBefore;

    /// <summary>Tries to reach a server; without one this takes a few milliseconds.</summary>
    internal void Connect()
    {
        // The client of a dead server is left alone: closing it would end the process.
        _deathsBefore = Deaths;
        using QuietStandardError quiet = new();
        int status;
        _client = jack_client_open(ClientName, StartNoServer, &status);
        if (_client is not null)
        {
            jack_on_shutdown(_client, &OnShutdown, null);
        }
    }

    internal List<string> Names()
    {
        List<string> names = [];
        byte** ports = IsConnected ? jack_get_ports(_client, null, MidiType, TakesInput) : null;
        for (byte** port = ports; port is not null && *port is not null; port++)
        {
            names.Add(Marshal.PtrToStringUTF8((nint)(*port)) ?? "");
        }

        jack_free(ports);
        return names;
    }

    [UnmanagedCallersOnly(CallConvs = [typeof(System.Runtime.CompilerServices.CallConvCdecl)])]
    private static void OnShutdown(void* argument) => Interlocked.Increment(ref _deaths);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    private static partial void* jack_client_open(string name, int options, int* status);

    [LibraryImport(Library)]
    private static partial void jack_on_shutdown(void* client, delegate* unmanaged[Cdecl]<void*, void> callback, void* argument);

    [LibraryImport(Library, StringMarshalling = StringMarshalling.Utf8)]
    private static partial byte** jack_get_ports(void* client, string? namePattern, string typePattern, nuint flags);

    [LibraryImport(Library)]
    private static partial void jack_free(void* pointer);
}
