using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Tests.Midi.Ports;

public class PortWatcherTests
{
    private const string Piano = "Digital Piano:Digital Piano MIDI 1 20:0";
    private const string Replugged = "Digital Piano:Digital Piano MIDI 1 24:0";

    [Theory]
    [InlineData("the device open is there: nothing to tell", Piano, Piano, null)]
    [InlineData("it is gone", Piano, "Organ 16:0", false)]
    [InlineData("everything is gone", Piano, "", false)]
    [InlineData("other numbers: it was put in again, and the way to it is cut", Piano, Replugged, false)]
    [InlineData("the one wished for is not there yet", null, "Organ 16:0", null)]
    [InlineData("it is there now, whatever its numbers", null, Replugged, true)]
    public void A_look_tells_only_what_differs_from_what_is_open(string because, string? open, string names, bool? told)
    {
        PortWatch watch = new(PortChoice.Named("digital piano"), open);
        List<PortSight> seen = [];
        using PortWatcher watcher = new(() => watch, _ => names.Split(';', StringSplitOptions.RemoveEmptyEntries), seen.Add);

        watcher.Look();

        Assert.True(seen.Count == (told is null ? 0 : 1), because);
        Assert.All(seen, sight => Assert.Equal((watch, told), (sight.Of, sight.IsThere)));
    }

    [Fact]
    public void With_nothing_to_watch_the_names_are_not_even_asked_for()
    {
        using PortWatcher watcher = new(() => null, _ => throw new InvalidOperationException(), _ => throw new InvalidOperationException());
        Assert.Null(Record.Exception(watcher.Look));
    }

    [Fact]
    public void After_a_loss_the_same_device_is_wanted_by_its_name_alone() =>
        Assert.Equal(
            new PortWatch(PortChoice.Named("Digital Piano:Digital Piano MIDI 1"), null),
            new PortWatch(PortChoice.First, Piano).AfterLoss());

    [Theory]
    [InlineData("built-in")]
    [InlineData("built-in tone")]
    public void A_loudspeaker_that_was_lost_is_looked_for_by_opening_it_and_no_other_is(string wish)
    {
        PortWatch plays = new(PortChoice.Named(wish), null);
        Assert.Empty(new PortLookout(() => throw new InvalidOperationException("It plays already.")).Names(plays));
        Assert.False(plays.AfterLoss().IsThere(new PortLookout(() => false).Names(plays.AfterLoss())));
        Assert.True(plays.AfterLoss().IsThere(new PortLookout(() => true).Names(plays.AfterLoss())));
    }

    [Fact]
    public void Where_the_loudspeaker_played_for_want_of_an_instrument_both_are_looked_for()
    {
        PortWatch lost = new PortWatch(PortChoice.First, null).AfterLoss();
        Assert.True(lost.IsThere(["built-in"]));
        Assert.True(lost.IsThere([Piano]));
        Assert.False(lost.IsThere([]));
    }

    [Fact]
    public void Of_two_names_the_one_that_is_exactly_the_wish_is_found_first() =>
        Assert.Equal(1, PortNames.Find(["Piano 2 20:0", "Piano 24:0"], PortChoice.Named("Piano")));
}
