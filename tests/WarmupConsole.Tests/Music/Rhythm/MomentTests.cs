using CsCheck;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Music.Rhythm;

public class MomentTests
{
    private static readonly Gen<Moment> AnyMoment = Gen.Long[0, 1L << 60].Select(nanoseconds => new Moment(nanoseconds));
    private static readonly Gen<TimeSpan> AnySpan = Gen.Long[-1_000_000_000, 1_000_000_000].Select(TimeSpan.FromTicks);

    [Fact]
    public void Going_and_coming_back_by_the_same_span_ends_where_it_began() => Gen.Select(AnyMoment, AnySpan).Sample((moment, span) =>
    {
        Assert.Equal(moment, moment + span - span);
        Assert.Equal(span, moment + span - moment);
    });

    [Fact]
    public void The_earlier_of_two_is_neither_after_the_one_nor_the_other() => Gen.Select(AnyMoment, AnyMoment).Sample((a, b) =>
    {
        Moment earlier = Moment.Earlier(a, b);
        Assert.True(earlier <= a && earlier <= b && (earlier == a || earlier == b));
        Assert.Equal(a < b, b > a);
        Assert.Equal(a >= b, a.CompareTo(b) >= 0);
    });

    [Fact]
    public void A_span_is_counted_in_nanoseconds() =>
        Assert.Equal("1500000000 ns", (new Moment(500_000_000) + TimeSpan.FromSeconds(1)).ToString());
}
