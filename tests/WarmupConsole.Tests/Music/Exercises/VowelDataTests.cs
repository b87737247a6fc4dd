using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Tests.Music.Exercises;

/// <summary>
/// Heights of the chart of the International Phonetic Association, as the "Table of vowels" of the English Wikipedia lists its 28
/// letters by name (read there; the chart itself was last revised in 2020). From closed to open in seven names, here 0 to 1.
/// </summary>
public sealed class VowelDataTests
{
    private static readonly string[] Names = ["close", "near-close", "close-mid", "mid", "open-mid", "near-open", "open"];

    [Theory]
    [InlineData("close", "i y ɨ ʉ ɯ u")]
    [InlineData("near-close", "ɪ ʏ ʊ")]
    [InlineData("close-mid", "e ø ɘ ɵ ɤ o")]
    [InlineData("mid", "ə")]
    [InlineData("open-mid", "ɛ œ ɜ ɞ ʌ ɔ")]
    [InlineData("near-open", "æ ɐ")]
    [InlineData("open", "a ɶ ɑ ɒ")]
    public void Every_vowel_has_the_height_of_its_name(string name, string vowels) =>
        Assert.All(vowels.Split(' '), vowel => Assert.Equal(Array.IndexOf(Names, name) / 6.0, VowelData.Height(vowel)!.Value, 9));

    [Theory]
    [InlineData("iː", 0.0)]
    [InlineData("aɪ", 1.0)]
    [InlineData("m", 0.0)]
    [InlineData("ʙ", 0.0)]
    [InlineData("", null)]
    [InlineData("?", null)]
    public void Length_marks_and_second_halves_of_diphthongs_do_not_count(string vowel, double? height) => Assert.Equal(height, VowelData.Height(vowel));

    // Trills, nasals, voiced fricatives and tense u and o are listed together as semi-occlusions (abstract of the US research grant
    // R01-DC013573); here vowels are left to their height.
    [Fact]
    public void Hums_and_trills_are_half_closed_and_vowels_are_not()
    {
        Assert.All(["m", "n", "ŋ", "ʙ", "v"], sound => Assert.True(VowelData.IsHalfClosed(sound)));
        Assert.All(["u", "a", ""], sound => Assert.False(VowelData.IsHalfClosed(sound)));
    }
}
