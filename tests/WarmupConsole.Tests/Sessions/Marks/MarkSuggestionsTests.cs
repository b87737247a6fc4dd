using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;
using WarmupConsole.Tests.Tui;

namespace WarmupConsole.Tests.Sessions.Marks;

public class MarkSuggestionsTests
{
    private static readonly Choir Choir = LiveFixture.Choir;

    [Theory]
    [InlineData("a", "altos flat")]
    [InlineData("a f", "altos flat")]
    [InlineData("ten str", "tenors strained")]
    [InlineData("basses sc", "basses scooping")]
    [InlineData("f", "flat")]
    [InlineData("everyone lat", "everyone late")]
    [InlineData("B SB", "basses short of breath")]
    public void The_likeliest_mark_comes_first(string typed, string first) => Assert.Equal(first, MarkSuggestions.For(typed, Choir, [])[0]);

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("a f in E")]
    [InlineData("windows open")]
    public void Nothing_is_suggested_for_an_empty_line_for_more_than_who_and_what_or_for_other_words(string typed) =>
        Assert.Empty(MarkSuggestions.For(typed, Choir, []));

    [Fact]
    public void What_was_marked_often_in_this_session_comes_before_what_was_not()
    {
        LiveMark[] marks = [Mark("b breathy"), Mark("a late"), Mark("a dark"), Mark("a dark"), Mark("t and b sharp"), Mark("the doors")];

        Assert.Equal(["altos dark", "altos late"], MarkSuggestions.For("a", Choir, marks).Take(2));
        Assert.Equal("tenors and basses sharp", MarkSuggestions.For("ten", Choir, marks)[0]);
        Assert.Equal("sopranos dark", MarkSuggestions.For("so", Choir, marks)[0]);
    }

    [Fact]
    public void Every_suggestion_is_understood_as_a_mark_and_there_are_few()
    {
        foreach (char letter in "abcdefghijklmnopqrstuvwxyz")
        {
            IReadOnlyList<string> suggestions = MarkSuggestions.For(letter.ToString(), Choir, []);
            Assert.InRange(suggestions.Count, 0, 5);
            Assert.All(suggestions, suggestion => Assert.False(MarkGrammar.Parse(suggestion, Choir).Single().IsFreeNote, suggestion));
        }
    }

    private static LiveMark Mark(string raw)
    {
        MarkContent content = MarkGrammar.Parse(raw, Choir)[0];
        return new(1, content, new(0, 0, null, new Moment(1)), raw, true);
    }
}
