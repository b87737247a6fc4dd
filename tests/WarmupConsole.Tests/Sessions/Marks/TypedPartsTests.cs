using WarmupConsole.Sessions.Marks;
using WarmupConsole.Tests.Tui;

namespace WarmupConsole.Tests.Sessions.Marks;

public class TypedPartsTests
{
    [Theory]
    [InlineData("a", "alto")]
    [InlineData("tb", "tenor bass")]
    [InlineData("basses and sopranos", "soprano bass")]
    [InlineData("only the altos", "alto")]
    [InlineData("s, t", "soprano tenor")]
    [InlineData("all", "")]
    [InlineData("s a t b", "")]
    public void Parts_are_understood_as_in_a_mark(string typed, string ids) => Assert.Equal(ids, string.Join(' ', TypedParts.Find(typed, LiveFixture.Choir)!));

    [Theory]
    [InlineData("")]
    [InlineData("and")]
    [InlineData("cellos")]
    [InlineData("a flat")]
    public void Other_words_are_none(string typed) => Assert.Null(TypedParts.Find(typed, LiveFixture.Choir));
}
