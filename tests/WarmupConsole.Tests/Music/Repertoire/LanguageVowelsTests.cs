using WarmupConsole.Music.Repertoire.Words;

namespace WarmupConsole.Tests.Music.Repertoire;

public sealed class LanguageVowelsTests
{
    [Theory]
    [InlineData("la", "Ky-", "i")]
    [InlineData("la", "cae-", "ɛ")]
    [InlineData("la", "qui", "i")]
    [InlineData("la", "iam", "a")]
    [InlineData("la", "Lux", "u")]
    [InlineData("it", "più", "u")]
    [InlineData("it", "che", "e")]
    [InlineData("it", "gio-", "o")]
    [InlineData("de", "Freu-", "ɔ")]
    [InlineData("de", "lieb", "i")]
    [InlineData("de-AT", "mein", "a")]
    [InlineData("de", "für", "y")]
    [InlineData("de", "Mund", "ʊ")]
    [InlineData("la", "---", "")]
    [InlineData("la", "", "")]
    [InlineData("la", "qu", "")]
    public void A_syllable_has_the_vowel_of_its_language(string language, string syllable, string vowel) =>
        Assert.Equal(vowel, LanguageVowels.For(language)!(syllable));

    [Theory]
    [InlineData("en")]
    [InlineData("")]
    [InlineData("latin")]
    public void Other_languages_have_no_rules(string language)
    {
        Assert.Null(LanguageVowels.For(language));
        Assert.Null(LanguageVowels.NameOf(language));
    }
}
