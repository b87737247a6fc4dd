using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Timing;

namespace WarmupConsole.Midi.Listening;

/// <summary>
/// Listens to one input and tells what counts: keys and controllers. It opens the input, notices that it is gone, and opens it again
/// when it is back. Everything else that a cable brings, and more than anybody can play, is passed over. One thread.
/// </summary>
public sealed class Ear(Func<InputOpening> open, Action<Frame> tell, IMonotonicClock clock)
{
    /// <summary>A cable brings about a thousand messages a second (31,250 baud); nobody plays half of that.</summary>
    public const int MostInASecond = 500;

    private static readonly TimeSpan BetweenLooks = TimeSpan.FromMilliseconds(400);

    /// <summary>Each look for an input that is not there makes and ends a client of the sound system, so they become rarer, up to this.</summary>
    private static readonly TimeSpan LongestBetweenLooks = TimeSpan.FromSeconds(3.2);
    private static readonly TimeSpan Patience = TimeSpan.FromMilliseconds(20);

    private MessageAssembler _assembler = new();
    private IMidiInput? _input;
    private string? _told;
    private long _second;
    private int _inSecond;
    private long _nextLook;
    private TimeSpan _untilLook = BetweenLooks;

    /// <summary>Listens until the event is set.</summary>
    public void Run(WaitHandle ends)
    {
        do
        {
            Turn();
        }
        while (!ends.WaitOne(_input is null ? _untilLook : TimeSpan.Zero));

        _input?.Close();
    }

    /// <summary>Opens the input, or takes what has come.</summary>
    public void Turn()
    {
        if (_input is not { } input)
        {
            Open();
            return;
        }

        input.Await(Patience);
        Take(input);
        if (clock.Now.Nanoseconds >= _nextLook)
        {
            _nextLook = (clock.Now + BetweenLooks).Nanoseconds;
            LoseIfGone(input);
        }
    }

    private void Open()
    {
        InputOpening opening = open();
        (_input, _assembler) = (opening.Input, new());
        _untilLook = _input is not null ? BetweenLooks : _untilLook * 2 > LongestBetweenLooks ? LongestBetweenLooks : _untilLook * 2;
        if (_input is not null || opening.Sentence != _told)
        {
            _told = opening.Sentence;
            tell(_input is null ? new Frame.InputLost(opening.Sentence) : new Frame.InputOpened(opening.Sentence));
        }
    }

    private void LoseIfGone(IMidiInput input)
    {
        if (!input.IsThere)
        {
            input.Close();
            _input = null;
            tell(new Frame.InputLost(ListeningTexts.Lost(input.Name)));
        }
    }

    /// <summary>A flood is taken in pieces, so that the end is noticed.</summary>
    private void Take(IMidiInput input)
    {
        Span<byte> bytes = stackalloc byte[256];
        int count = input.Take(bytes);
        foreach (byte next in bytes[..count])
        {
            if (_assembler.Take(next) is { Kind: not MidiMessageKind.ProgramChange } message && MayTell())
            {
                tell(new Frame.Heard(message));
            }
        }
    }

    private bool MayTell()
    {
        long second = clock.Now.Nanoseconds / 1_000_000_000;
        (_second, _inSecond) = second == _second ? (second, _inSecond + 1) : (second, 1);
        return _inSecond <= MostInASecond;
    }
}
