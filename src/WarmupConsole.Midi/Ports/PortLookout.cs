using WarmupConsole.Midi.Sound;

namespace WarmupConsole.Midi.Ports;

/// <summary>The full names of the machine's ports, again and again, through handles of its own that stay open. Used by one thread.</summary>
/// <param name="loudspeakerPlays">Whether the machine's loudspeaker can be opened; asked only while it is lost.</param>
public sealed class PortLookout(Func<bool> loudspeakerPlays)
{
    private const int LooksBetweenAttempts = 4;
    private readonly Dictionary<int, RtMidiOut> _outputs = [];
    private readonly JackServer _jack = new();
    private int _looks;

    public IReadOnlyList<string> Names(PortWatch watch)
    {
        bool isWished = BuiltInSound.IsWished(watch.Wish);
        IReadOnlyList<string> loudspeaker = watch.LoudspeakerIsLost && loudspeakerPlays() ? [isWished ? watch.Wish.Name : BuiltInSound.Name] : [];
        return isWished ? loudspeaker : [.. Devices(watch), .. loudspeaker];
    }

    private IReadOnlyList<string> Devices(PortWatch watch)
    {
        if (RawDevices.IsPath(watch.Wish))
        {
            return File.Exists(watch.Wish.Name) ? [watch.Wish.Name] : [];
        }

        bool attempts = _looks++ % LooksBetweenAttempts == 0;
        return RtMidiLibrary.IsPresent ? [.. RtMidiOut.Apis().SelectMany(api => Names(api, attempts))] : SystemDevices.Names();
    }

    private List<string> Names(int api, bool attempts)
    {
        if (api == JackServer.Api && _jack.IsInstalled)
        {
            return JackNames(attempts);
        }

        if (attempts && !_outputs.ContainsKey(api))
        {
            using QuietStandardError quiet = new();
            if (RtMidiOut.Create(api) is { } created)
            {
                _outputs.Add(api, created);
            }
        }

        return _outputs.TryGetValue(api, out RtMidiOut? output) ? output.Names() : [];
    }

    private List<string> JackNames(bool attempts)
    {
        if (attempts && !_jack.IsConnected)
        {
            _jack.Connect();
        }

        return _jack.Names();
    }
}
