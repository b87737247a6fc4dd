using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Files;

/// <summary>Records what is sent and writes it to a file when closed: playing never waits for the disk.</summary>
public sealed class FileRecorder : IMidiPort
{
    // The file keeps times, not the tempo of the music; at 120 beats a minute a tick is about half a millisecond.
    private static readonly Tempo TimeBase = Tempo.FromBeatsPerMinute(120);

    private readonly string _path;
    private readonly RecordingPort _recording;
    private readonly Func<IReadOnlyList<TimedMessage>, byte[]> _build;
    private bool _closed;

    private FileRecorder(string path, IMonotonicClock clock, Func<IReadOnlyList<TimedMessage>, byte[]> build) =>
        (_path, _recording, _build) = (path, new(clock), build);

    public string Name => _path;

    /// <summary>A Standard MIDI File, named after its path.</summary>
    public static FileRecorder Smf(string path, IMonotonicClock clock) =>
        new(path, clock, messages => SmfFile.Build(Path.GetFileNameWithoutExtension(path), TimeBase, messages));

    /// <summary>A line of text for each message (<see cref="TraceText"/>), for measuring.</summary>
    public static FileRecorder Trace(string path, IMonotonicClock clock) => new(path, clock, TraceText.Build);

    public bool Send(ReadOnlySpan<byte> message) => _recording.Send(message);

    public string? Close()
    {
        if (_closed)
        {
            return null;
        }

        _closed = true;
        _recording.Close();
        return Write(_recording.Sent);
    }

    /// <summary>Writes an empty recording at once, so that a place that cannot be written to is known before the music.</summary>
    /// <returns>Null, or a sentence about why it cannot be written.</returns>
    public string? TryPlace() => File.Exists(_path) ? PortTexts.RecordingExists(_path) : Write([]);

    private string? Write(IReadOnlyList<TimedMessage> messages)
    {
        try
        {
            SmfFile.Save(_path, _build(messages));
            return null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return PortTexts.NotRecorded(_path, e.Message);
        }
    }
}
