using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Text;

namespace WarmupConsole.Tests.Music.Exercises;

public class SyllableTextTests
{
    private static readonly Pattern Pattern = PatternText.Parse("1 2 - 3").Value!;

    [Fact]
    public void Each_sounding_note_gets_its_syllable_and_a_carried_one_none()
    {
        Pattern sung = SyllableText.Apply(Pattern, "noo/u ~ mah").Value!;

        Assert.Equal([new("noo", "u"), null, null, new("mah", "")], sung.Notes.Select(note => note.Syllable));
    }

    [Fact]
    public void A_single_syllable_serves_the_whole_pattern()
    {
        Pattern sung = SyllableText.Apply(Pattern, "vee/i").Value!;

        Assert.Equal([new("vee", "i"), null, null, null], sung.Notes.Select(note => note.Syllable));
        Assert.Equal("vee/i", SyllableText.Write(sung));
    }

    [Fact]
    public void A_pattern_without_syllables_writes_none() => Assert.Equal("", SyllableText.Write(Pattern));

    [Fact]
    public void Too_few_syllables_are_counted()
    {
        TextError error = Assert.Single(SyllableText.Apply(Pattern, "noo mah").Errors);

        Assert.Equal(new(0, 7, MusicTextErrors.SyllableCount(2, 3)), error);
        Assert.StartsWith("2 syllables for 3 sounding notes", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_can_be_carried_into_the_first_note() =>
        Assert.Equal(new(1, 1, MusicTextErrors.CarriesNothing), Assert.Single(SyllableText.Apply(Pattern, " ~ noo mah").Errors));

    [Fact]
    public void No_syllable_at_all_is_refused() =>
        Assert.Equal(new(0, 1, MusicTextErrors.NoSyllable), Assert.Single(SyllableText.Apply(Pattern, " ").Errors));

    [Theory]
    [InlineData("noo/")]
    [InlineData("/u")]
    [InlineData("a/b/c")]
    public void A_syllable_with_half_a_vowel_is_refused_at_its_place(string syllable) =>
        Assert.Equal(new(2, syllable.Length, MusicTextErrors.Syllable(syllable)), Assert.Single(SyllableText.Apply(Pattern, $"a {syllable} ~").Errors));
}
