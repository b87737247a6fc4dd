using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Hands;

namespace WarmupConsole.Tests.Sessions.Hands;

/// <summary>What counts as a press, and all that does not.</summary>
public sealed class PedalWatchTests
{
    private static readonly Pedals Bound = Pedals.None
        .With(PedalUse.GoOn, new(false, 64, false)).With(PedalUse.Pin, new(false, 67, true)).With(PedalUse.Again, new(true, 21, false));

    private PedalWatch _watch = PedalWatch.For(Bound);
    private Moment _now = new(1_000_000_000);

    [Fact]
    public void A_pedal_acts_when_it_goes_down_and_not_when_it_comes_up() =>
        Assert.Equal([PedalUse.GoOn, null, PedalUse.GoOn, null], Tread(64, (0, 127), (500, 0), (500, 127), (500, 0)));

    [Fact]
    public void A_half_way_pedal_that_sends_a_stream_acts_once_on_its_way_and_not_while_it_trembles()
    {
        int[] down = [.. Enumerable.Range(1, 100)];
        int[] trembling = [62, 66, 60, 70, 55, 65, 45, 80, 63, 64, 63, 64];
        int[] again = [.. Enumerable.Range(0, 60).Select(value => 60 - value), .. down];
        Assert.Equal(2, Tread(64, [.. down.Concat(trembling).Concat(again).Select(value => (20, value))]).Count(use => use == PedalUse.GoOn));
    }

    [Fact]
    public void Contacts_that_bounce_act_once_going_down_and_not_at_all_coming_up()
    {
        (int, int)[] down = [(0, 127), (2, 0), (3, 127), (5, 0), (4, 127)];
        (int, int)[] up = [(900, 0), (3, 127), (4, 0), (6, 127), (3, 0)];
        Assert.Single(Tread(64, [.. down, .. up]), use => use is not null);
        Assert.Equal(PedalUse.GoOn, Assert.Single(Tread(64, (400, 127))));
    }

    [Fact]
    public void A_pedal_that_stood_down_when_listening_began_acts_only_after_it_was_up() =>
        Assert.Equal([null, null, null, PedalUse.GoOn], Tread(64, (0, 90), (20, 88), (900, 10), (300, 100)));

    [Fact]
    public void A_pedal_that_works_the_other_way_round_does_so_here_too() =>
        Assert.Equal([PedalUse.Pin, null, PedalUse.Pin], Tread(67, (0, 0), (500, 127), (500, 0)));

    [Fact]
    public void A_key_acts_when_it_is_struck_and_one_that_is_stuck_only_once()
    {
        Assert.Equal([PedalUse.Again, null, PedalUse.Again], Play(21, (0, 80), (200, 0), (300, 64)));
        Assert.All(Play(21, (300, 64), (300, 64), (5000, 64)), Assert.Null);
    }

    [Fact]
    public void What_has_no_use_does_nothing()
    {
        Assert.All(Tread(1, (0, 127), (500, 0)), Assert.Null);
        Assert.All(Play(64, (0, 127), (500, 0)), Assert.Null);
    }

    [Fact]
    public void Whatever_comes_in_whatever_order_no_two_presses_of_one_control_are_closer_than_a_foot_can_tread()
    {
        Random random = new(5);
        Dictionary<PedalUse, Moment> last = [];
        for (int i = 0; i < 20_000; i++)
        {
            Touch touch = new(random.Next(3) == 0, random.Next(2) == 0 ? 64 : 21, random.Next(128));
            if (After(random.Next(60), touch) is { } use)
            {
                Assert.True(!last.TryGetValue(use, out Moment before) || _now - before >= TimeSpan.FromMilliseconds(200));
                last[use] = _now;
            }
        }

        Assert.Equal(2, last.Count);
    }

    private PedalUse?[] Tread(int controller, params (int Milliseconds, int Value)[] values) => [.. values.Select(value => After(value.Milliseconds, new(false, controller, value.Value)))];

    private PedalUse?[] Play(int midi, params (int Milliseconds, int Value)[] values) => [.. values.Select(value => After(value.Milliseconds, new(true, midi, value.Value)))];

    private PedalUse? After(int milliseconds, Touch touch)
    {
        _now += TimeSpan.FromMilliseconds(milliseconds);
        (_watch, PedalUse? pressed) = _watch.After(touch, _now);
        return pressed;
    }
}
