using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Storage.Folders;

namespace WarmupConsole.Tests.Music.Exercises;

/// <summary>What is proposed for a new exercise from what it sounds like.</summary>
public sealed class ProposalTests
{
    [Theory]
    [InlineData("mm/m", Articulation.Legato, Stage.Humming)]
    [InlineData("ng/ŋ nn/n mm/m", Articulation.Glide, Stage.Humming)]
    [InlineData("brr/ʙ", Articulation.Legato, Stage.LipTrill)]
    [InlineData("vv/v ~ mm/m", Articulation.Legato, Stage.LipTrill)]
    [InlineData("oo/u", Articulation.Glide, Stage.Slide)]
    [InlineData("noo/u ~ ~", Articulation.Legato, Stage.Sung)]
    [InlineData("mm/m nah/ɑ ~", Articulation.Legato, Stage.Sung)]
    [InlineData("la", Articulation.Staccato, Stage.Sung)]
    public void The_stage_follows_from_the_sounds(string syllables, Articulation articulation, Stage stage)
    {
        Pattern pattern = SyllableText.Apply(PatternText.Parse("1 2 3").Value!, syllables).Value!;
        Tempo tempo = Tempo.FromBeatsPerMinute(72);
        Assert.Equal(stage, StageProposal.For(new() { Id = "a", Title = "A", Stage = Stage.Settling, Tempo = new(tempo, tempo, tempo), Pattern = pattern, Articulation = articulation }));
    }

    [Theory]
    [InlineData("noo", "u")]
    [InlineData("Nee", "i")]
    [InlineData("mah", "ɑ")]
    [InlineData("brr", "ʙ")]
    [InlineData("thing", "ŋ")]
    [InlineData("lux", "")]
    public void A_vowel_is_told_by_its_usual_spelling(string syllable, string vowel) => Assert.Equal(vowel, SpelledVowelData.Vowel(syllable));

    [Fact]
    public void Vowels_that_were_written_stay()
    {
        Pattern pattern = SyllableText.Apply(PatternText.Parse("1 2 3 4").Value!, "noo/ʊ moh ~ x").Value!;
        Assert.Equal("noo/ʊ moh/o ~ x", SyllableText.Write(SpelledVowelData.Complete(pattern)));
    }

    [Fact]
    public void The_table_agrees_with_the_catalogue_wherever_it_knows_a_spelling()
    {
        Syllable[] written = [.. Catalogue.Exercises.SelectMany(exercise => exercise.Lines).SelectMany(line => line.Notes).Select(note => note.Syllable).OfType<Syllable>().Distinct()];
        Syllable[] known = [.. written.Where(syllable => SpelledVowelData.Vowel(syllable.Text).Length > 0)];
        Assert.InRange(known.Length, 30, written.Length);
        Assert.DoesNotContain(known, syllable => syllable.Vowel != "β" && SpelledVowelData.Vowel(syllable.Text) != syllable.Vowel);
    }

    [Fact]
    public void Every_spelling_stands_for_a_sound_of_known_height() =>
        Assert.All(SpelledVowelData.Spellings, spelling => Assert.NotNull(VowelData.Height(SpelledVowelData.Vowel(spelling))));
}
