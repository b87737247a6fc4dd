using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Files;

/// <summary>Records what is sent and writes it as a Standard MIDI File when closed.</summary>
public sealed class SmfRecorder(string path, IMonotonicClock clock) : IMidiPort
{
    // The file keeps times, not the tempo of the music; at 120 beats a minute a tick is about half a millisecond.
    private static readonly Tempo TimeBase = Tempo.FromBeatsPerMinute(120);

    private readonly RecordingPort _recording = new(clock);
    private bool _closed;

    public string Name => path;

    public bool Send(ReadOnlySpan<byte> message) => _recording.Send(message);

    public string? Close()
    {
        if (_closed)
        {
            return null;
        }

        _closed = true;
        return Write(_recording.Sent);
    }

    /// <summary>Writes an empty recording at once, so that a place that cannot be written to is known before the music.</summary>
    /// <returns>Null, or a sentence about why it cannot be written.</returns>
    public string? TryPlace() => File.Exists(path) ? PortTexts.RecordingExists(path) : Write([]);

    private string? Write(IReadOnlyList<TimedMessage> messages)
    {
        try
        {
            SmfFile.Save(path, SmfFile.Build(Path.GetFileNameWithoutExtension(path), TimeBase, messages));
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return PortTexts.NotRecorded(path, e.Message);
        }
    }
}
