using WarmupConsole.Sessions.Hands;

namespace WarmupConsole.Tests.Sessions.Hands;

/// <summary>A control is learnt when it was pressed and let go.</summary>
public sealed class PedalLearningTests
{
    [Theory]
    [InlineData(64, "127 0", "sustain")]
    [InlineData(66, "127 0", "sostenuto")]
    [InlineData(67, "0 127", "soft, reversed")]
    [InlineData(64, "3 20 50 70 110 127 100 60 45 30", "sustain")] // every value on its way
    [InlineData(80, "120 90 60 20 0 30 64 90", "controller 80, reversed")]
    [InlineData(64, "127", null)] // not let go
    [InlineData(64, "3 20 50", null)] // not pressed
    [InlineData(123, "127 0", null)] // an order to the instrument
    [InlineData(11, "77 77 77", null)] // stands where it stood
    public void A_pedal_is_learnt_with_the_way_round_that_it_works(int controller, string values, string? learnt) =>
        Assert.Equal(learnt, Learn([.. values.Split(' ').Select(value => new Touch(false, controller, int.Parse(value, System.Globalization.CultureInfo.InvariantCulture)))])?.ToString());

    [Fact]
    public void A_key_is_learnt_when_it_is_let_go_and_other_keys_meanwhile_are_not_meant() =>
        Assert.Equal("key 21", Learn(new(true, 60, 0), new(true, 21, 50), new(true, 64, 50), new(true, 64, 0), new(true, 21, 0))?.ToString());

    [Theory]
    [InlineData("sustain")]
    [InlineData("soft, reversed")]
    [InlineData("key 0")]
    [InlineData("key 127")]
    [InlineData("controller 119, reversed")]
    public void What_is_written_reads_back(string text) => Assert.Equal(text, Control.Parse(text)?.ToString());

    [Theory]
    [InlineData("")]
    [InlineData("key 128")]
    [InlineData("controller 120")]
    [InlineData("key -1")]
    [InlineData("key 21, reversed")]
    [InlineData("damper")]
    public void Anything_else_is_no_control(string text) => Assert.Null(Control.Parse(text));

    [Fact]
    public void A_control_has_one_use_and_a_use_one_control()
    {
        Pedals pedals = Pedals.None.With(PedalUse.GoOn, new(false, 64, false)).With(PedalUse.Pin, new(false, 64, true)).With(PedalUse.Pin, new(true, 21, false));
        Assert.Equal("key 21: pin", pedals.ToString());
    }

    private static Control? Learn(params Touch[] touches)
    {
        PedalLearning learning = new(PedalUse.GoOn, new Dictionary<int, int> { [11] = 77 });
        Control? learnt = null;
        foreach (Touch touch in touches)
        {
            Assert.Null(learnt);
            (learning, learnt) = learning.After(touch);
        }

        return learnt;
    }
}
