using WarmupConsole.Sessions.Live;
using WarmupConsole.Tui.Hosting;
using WarmupConsole.Tui.Keys;

namespace WarmupConsole.Tests.Tui.Hosting;

public class TabWatchTests
{
    [Fact]
    public void The_key_it_watches_for_is_the_one_that_silences() =>
        Assert.Equal(["Tab"], KeyTable.Rows.Single(row => row.Action == LiveAction.Silence).Strokes);

    [Theory]
    [InlineData("\t")]
    [InlineData("ab\tc")]
    [InlineData("\u001b[A\t")]
    [InlineData("\u001b[<35;10;4M\t")]
    [InlineData("\u001bOP\t")]
    [InlineData("\u001b[200~flat\tin E\u001b[201~\t")]
    [InlineData("\u001bx\t")]
    [InlineData("\u001b[9u")]
    [InlineData("\u001b[9;1:1u")]
    [InlineData("\u001b[1;2;3;4;5;6;7;8;9;10;11;12;13m\t")]
    public void A_single_Tab_is_found_wherever_it_stands(string sent) => Assert.Equal(1, Found(sent));

    [Theory]
    [InlineData("abc")]
    [InlineData("\u001b\t")]
    [InlineData("\u001b[Z")]
    [InlineData("\u001b[9;2u")]
    [InlineData("\u001b[9;1:3u")]
    [InlineData("\u001b[99u")]
    [InlineData("\u001b[200~one\ttwo\u001b[9uthree\t")]
    public void What_only_looks_like_it_is_passed_over(string sent) => Assert.Equal(0, Found(sent));

    [Fact]
    public void Escape_and_then_Tab_are_two_keys_when_they_were_not_sent_together() => Assert.Equal(1, Found("\u001b", "\t"));

    [Fact]
    public void Sequences_and_pasted_text_may_be_cut_anywhere_but_Tab_is_found_once()
    {
        const string Sent = "\u001b[200~a\tb\u001b[201~\u001b[1;5A\u001b[9u";
        for (int cut = 0; cut <= Sent.Length; cut++)
        {
            Assert.Equal(1, Found(Sent[..cut], Sent[cut..]));
        }
    }

    [Fact]
    public void Brackets_typed_after_escape_hide_no_Tab() => Assert.Equal(1, Found("\u001b[", "\t"));

    private static int Found(params string[] reads)
    {
        int found = 0;
        TabWatch watch = new(() => found++);
        foreach (string read in reads)
        {
            watch.BeginRead();
            foreach (char character in read)
            {
                watch.See(character);
            }
        }

        return found;
    }
}
