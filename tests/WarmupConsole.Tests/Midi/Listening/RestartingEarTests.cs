using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Player;
using WarmupConsole.Midi.Protocol;
using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.Midi.Listening;

/// <summary>What it says comes as reports here: open or lost, with its sentence.</summary>
public sealed class RestartingEarTests : IDisposable
{
    private static readonly PlayerReport Listening = new(PlayerReportKind.PortOpened, "Listening.");
    private static readonly PlayerReport StartedAgain = new(PlayerReportKind.PortLost, "Listening to the piano ended by itself (killed). It is started again.");
    private readonly List<EarLink> _links = [];
    private readonly VirtualClock _clock = new();
    private readonly ReportList _told = new();
    private readonly RestartingEar _ear;
    private string? _trouble;

    public RestartingEarTests()
    {
        _ear = new(Start, _clock);
        _ear.Told += (sentence, isOpen) => _told.Add(new(isOpen ? PlayerReportKind.PortOpened : PlayerReportKind.PortLost, sentence));
        _ear.Heard += message => _told.Add(new(PlayerReportKind.PortOpened, $"heard {message.Data1}"));
    }

    public void Dispose() => _ear.Dispose();

    [Fact]
    public void After_a_death_it_is_started_again_told_and_hears_on()
    {
        _ear.Start();
        _told.WaitFor(1);
        _links[0].Kill();
        Assert.Equal([Listening, StartedAgain, Listening], _told.WaitFor(3));
        Assert.True(_links[0].IsDisposed);
        _links[1].Say(new Frame.Heard(MidiMessage.NoteOn(0, 61, 64)));
        Assert.Equal("heard 61", _told.WaitFor(4)[3].Sentence);
    }

    [Fact]
    public void The_fourth_death_within_a_minute_is_the_last_and_a_later_one_is_not()
    {
        _ear.Start();
        for (int death = 0; death < 6; death++)
        {
            _told.WaitFor(1 + (2 * death)); // the death before is over and counted
            _clock.MoveTo(new Moment(death < 3 ? 0 : 61_000_000_000));
            _links[death].Kill();
        }

        _told.WaitFor(13);
        _links[6].Kill();
        Assert.Equal(
            "Listening to the piano ended by itself (killed). It was started 3 times within a minute and ended each time. Pedals and keys of the piano do nothing now; leave and start the console again to use them.",
            _told.WaitFor(14)[13].Sentence);
        Assert.Equal(7, _links.Count);
    }

    [Fact]
    public void One_that_cannot_be_started_again_is_told_with_the_reason()
    {
        _ear.Start();
        _told.WaitFor(1);
        _trouble = "No room.";
        _links[0].Kill();
        Assert.Equal(
            [StartedAgain, new(PlayerReportKind.PortLost, "Listening to the piano could not be started: No room. Pedals and keys of the piano do nothing now; leave and start the console again to use them.")],
            _told.WaitFor(3).Skip(1));
    }

    [Fact]
    public void One_that_cannot_be_started_at_all_is_told_and_nothing_fails()
    {
        _trouble = "No room.";
        _ear.Start();
        Assert.StartsWith("Listening to the piano could not be started: No room.", Assert.Single(_told.All).Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void Disposed_of_it_ends_the_process_and_starts_no_other()
    {
        _ear.Start();
        _told.WaitFor(1);
        _ear.Dispose();
        Assert.True(Assert.Single(_links).IsDisposed);
        _ear.Start();
        Assert.All(_links, link => Assert.True(link.IsDisposed));
    }

    private EarClient Start()
    {
        if (_trouble is not null)
        {
            throw new IOException(_trouble);
        }

        EarLink link = new() { LastWords = "killed" };
        link.Say(new Frame.InputOpened("Listening."));
        _links.Add(link);
        return new(link);
    }
}
