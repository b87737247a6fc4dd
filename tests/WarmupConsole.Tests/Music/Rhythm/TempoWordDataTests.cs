using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Music.Rhythm;

public sealed class TempoWordDataTests
{
    /// <summary>
    /// The metronome's bands as open theory pages agree on them (instrument.bible, "Tempo"; coronastrings.com, "Tempo markings").
    /// They meet at their ends, where either word holds; andantino, allegretto and vivace lie inside or across them.
    /// </summary>
    public static TheoryData<string, int, int> Bands => new()
    {
        { "largo", 40, 60 },
        { "larghetto", 60, 66 },
        { "adagio", 66, 76 },
        { "andante", 76, 108 },
        { "moderato", 108, 120 },
        { "allegro", 120, 168 },
        { "presto", 168, 200 },
        { "prestissimo", 201, 300 },
    };

    [Theory]
    [MemberData(nameof(Bands))]
    public void Inside_its_published_band_each_word_holds_and_at_both_ends_it_or_its_neighbour(string word, int from, int to)
    {
        Assert.All(Enumerable.Range(from + 1, to - from - 1), bpm => Assert.Equal(word, Word(bpm)));
        Assert.Equal(word, Word(from));
    }

    // A second table (Portuguese, in print) puts the words elsewhere: andante at 73-80, moderato at 96-104, allegro at 121-140.
    [Theory]
    [InlineData(53, "largo")]
    [InlineData(62, "larghetto")]
    [InlineData(69, "adagio")]
    [InlineData(77, "andante")]
    [InlineData(130, "allegro")]
    [InlineData(174, "presto")]
    public void Where_two_published_tables_agree_so_does_this_one(int bpm, string word) => Assert.Equal(word, Word(bpm));

    [Fact]
    public void Slower_than_any_table_is_largo_still() => Assert.Equal("largo", Word(Tempo.SlowestBeatsPerMinute));

    private static string Word(int bpm) => TempoWordData.Word(Tempo.FromBeatsPerMinute(bpm));
}
