using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Midi.Player;

/// <summary>
/// Notices when a silence asked for is not reported as done in time. Opening a port may take longer than that, so nothing is
/// overdue before it has been told what came of it. The host's thread asks, the reading thread answers.
/// </summary>
internal sealed class SilenceWatch(TimeSpan patience)
{
    private static readonly TimeSpan AMoment = TimeSpan.FromMilliseconds(1);
    private long _asked = long.MinValue;
    private long _answered = long.MinValue;
    private Moment? _deadline;
    private volatile bool _isOpen;

    private bool IsAnswered => Volatile.Read(ref _answered) >= _asked;

    internal void Opening() => _isOpen = false;

    internal void Opened() => _isOpen = true;

    internal void Asked(long generation)
    {
        _deadline = IsAnswered ? null : _deadline;
        _asked = generation;
    }

    internal void Answered(long generation) => Volatile.Write(ref _answered, generation);

    internal bool IsOverdue(Moment now)
    {
        _deadline = IsAnswered || !_isOpen ? null : _deadline ?? now + patience;
        return now > _deadline;
    }

    /// <summary>When to ask again whether it is overdue, or the other moment if that comes first.</summary>
    internal Moment? NextLook(Moment? other) => (_deadline, other) switch
    {
        ({ } deadline, { } moment) => Moment.Earlier(deadline + AMoment, moment),
        var (deadline, moment) => deadline + AMoment ?? moment,
    };
}
