using WarmupConsole.App;

namespace WarmupConsole.Tests.App;

public class AppTextsTests
{
    [Fact]
    public void Punctuality_is_told_in_milliseconds() => Assert.Equal(
        "312 notes played, 2 left out; late by 0.004 ms (median), 1.250 ms (99 %), 20.000 ms (worst).",
        AppTexts.Punctual(new(312, 2, 4_000, 1_250_000, 20_000_000)));
}
