using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Repertoire;
using WarmupConsole.Music.Repertoire.Mapping;
using WarmupConsole.Music.Repertoire.Places;
using WarmupConsole.Music.Repertoire.Words;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Tests.Music.Repertoire;

/// <summary>One reason at a time: a line that has it, and one that just has not. A beat is a second; comfortable C4–E5, extreme B3–G5.</summary>
public sealed class HardPlacesTests
{
    private static readonly Part Soprano = new("soprano", "Soprano", [], [], 10, 0, new(new(Pitch.Parse("B3"), Pitch.Parse("G5")), new(Pitch.Parse("C4"), Pitch.Parse("E5"))));

    [Theory]
    [InlineData("above comfortable", "C5 F5", "C5 E5")]
    [InlineData("below comfortable", "D4 B3", "D4 C4")]
    [InlineData("high and long", "C5:1/2 D5:2", "C5:1/2 D5:7/4")]
    [InlineData("high and long", "C5:1/2 D5:2", "C5:1/2 C#5:2")]
    [InlineData("large leap", "C4 Ab4", "C4 G4")]
    [InlineData("large leap", "C5 C4", "C5 F4")]
    [InlineData("dissonant leap", "C4 F#4", "C4 F4")]
    [InlineData("dissonant leap", "C4 Bb4", "C4 A4")]
    [InlineData("dissonant leap", "C#4 F4", "C#4 E#4")] // a diminished fourth, and a third
    [InlineData("dissonant leap", "C4 Eb5", "C4 C5")]
    [InlineData("dissonant leap", "C4 F#4", "C4 - - - F#4")] // found anew after a rest
    [InlineData("leap into an extreme", "C5 F5", "D5 F5")]
    [InlineData("quick notes", "C5:1/4 D5:1/4 E5:1/4 C5:1/4", "C5:1/4 D5:1/4 E5:1/4 C5")]
    [InlineData("quick notes", "C5:1/4 D5:1/4 E5:1/4 C5:1/4", "C5:1/3 D5:1/3 E5:1/3 C5:1/3")]
    [InlineData("chromatic run", "C4 C#4 D4 Eb4", "C4 C#4 D4 E4")]
    [InlineData("chromatic run", "G4 F#4 F4 E4", "G4 F#4 F4 F#4")]
    [InlineData("long phrase without a breath", "C4:4 C4:4 C4:3", "C4:4 C4:4 C4:2")]
    [InlineData("long phrase without a breath", "C4:4 C4:4 C4:3", "C4:4 C4:4 -:1/4 C4:3")]
    public void A_reason_is_found_where_it_is_and_not_where_it_just_is_not(string reason, string hard, string easy)
    {
        Assert.Contains(reason, Reasons(hard));
        Assert.DoesNotContain(reason, Reasons(easy));
    }

    [Fact]
    public void High_and_soft_needs_both()
    {
        Assert.Contains("high and soft", Reasons("C5 E5", note => note with { Loudness = 1 }));
        Assert.DoesNotContain("high and soft", Reasons("C5 E5", note => note with { Loudness = 3 }));
        Assert.DoesNotContain("high and soft", Reasons("C5 E5"));
        Assert.DoesNotContain("high and soft", Reasons("C4 E4", note => note with { Loudness = 1 }));
    }

    [Fact]
    public void A_breath_mark_or_punctuation_ends_a_phrase()
    {
        const string Long = "C4:4 C4:4 C4:3";
        Assert.DoesNotContain("long phrase without a breath", Reasons(Long, note => note with { Traits = NoteTraits.BreathAfter }));
        Assert.DoesNotContain("long phrase without a breath", Reasons(Long, note => note with { Lyric = "sea," }));
        Assert.Contains("long phrase without a breath", Reasons(Long, note => note with { Lyric = "sea" }));
    }

    [Fact]
    public void A_closed_vowel_counts_on_high_notes_by_the_rules_of_the_language()
    {
        LookQuestion latin = LookQuestion.Plain with { Vowels = LanguageVowels.For("la") };
        Assert.Contains("closed vowel on a high note", Reasons("C5 E5", note => note with { Lyric = "Ky-" }, latin));
        Assert.DoesNotContain("closed vowel on a high note", Reasons("C5 E5", note => note with { Lyric = "la-" }, latin));
        Assert.DoesNotContain("closed vowel on a high note", Reasons("C4 E4", note => note with { Lyric = "Ky-" }, latin));
        Assert.DoesNotContain("closed vowel on a high note", Reasons("C5 E5", note => note with { Lyric = "Ky-" }));
    }

    [Fact]
    public void Weak_pitches_of_the_part_count_and_half_as_much_beside_them()
    {
        Assert.Equal(2, Weakness("A4"), 3);
        Assert.Equal(1, Weakness("Ab4"), 3);
        Assert.Equal(0, Weakness("G4"), 3);
        Assert.DoesNotContain("near a weak pitch", Reasons("A4:2", question: LookQuestion.Plain with { WeakPitches = [new("alto", 69)] }));
    }

    [Fact]
    public void An_entry_that_nobody_else_makes_is_exposed()
    {
        Assert.Equal(2, Entry("-:4 C4", "C4"), 3);
        Assert.Equal(1, Entry("-:4 C4", "E4:4 E4:4"), 3);
        Assert.Equal(1, Entry("-:4 C4", "E4:3 E4:2 E4:3"), 3);
        Assert.Equal(0, Entry("-:4 C4", "E4:3 -:5/4 E4:1"), 3);
        Assert.Equal(0, Entry("C4 -:3 C4", "C4 -:3 -:1 E4"), 3);
    }

    [Fact]
    public void Ties_are_one_tone_and_divided_notes_are_no_leap()
    {
        Assert.Contains("high and long", Reasons("D5 D5", note => note with { Traits = note.Bar == 0 && note.Offset == Beats.Zero ? NoteTraits.TieStart : NoteTraits.TieStop }));
        Assert.DoesNotContain("high and long", Reasons("D5 D5"));
        Assert.DoesNotContain("large leap", Reasons("C4 C4+E5"));
        Assert.Contains("large leap", Reasons("C4 C5+E5"));
    }

    [Fact]
    public void Time_beyond_and_quartiles_are_weighed_by_length()
    {
        LineLook look = Look("C4:1 E4:1 G4:4 C5:1 F5:2 A5:1");
        Assert.Equal((10, 3, 1), (look.Time.Sung, look.Time.BeyondComfortable, look.Time.BeyondExtreme));
        Assert.Equal(["G4", "G4", "F5"], ((double[])[0.25, 0.5, 0.75]).Select(share => look.Tessitura.At(share)!.Value.ToString()));
    }

    [Fact]
    public void A_passage_takes_in_neighbours_that_are_nearly_as_hard_and_the_hardest_comes_first()
    {
        LineLook look = Look("C4:4 C4:4 F5:4 -:4 C4:4 C4:4 F#5:4 F#5:4");
        Assert.Equal([(6, 7), (2, 2)], look.Passages.Select(passage => (passage.From, passage.To)));
        Assert.Equal("above comfortable", HardReasonData.Words(look.Passages[0].Hardships[0].Reason));
    }

    [Fact]
    public void A_passage_is_never_longer_than_four_bars() =>
        Assert.All(Look(string.Join(' ', Enumerable.Repeat("F5:4 -:4", 20))).Passages, passage => Assert.InRange(passage.To - passage.From, 0, 3));

    private static double Weakness(string pitch) => Look($"{pitch}:2", question: LookQuestion.Plain with { WeakPitches = [new("soprano", 69)] })
        .Hardships.Where(hardship => hardship.Reason == HardReason.WeakPitch).Sum(hardship => hardship.Points);

    private static double Entry(string line, string other)
    {
        Score score = Scored.Of(Scored.Part("P1", "Soprano", "G2", Scored.Line(line)), Scored.Part("P2", "Soprano 2", "G2", Scored.Line(other)));
        return ScoreLook.Of(score, ScoreMap.Guess(score, [Soprano]), LookQuestion.Plain).Lines[0].Hardships
            .Where(hardship => hardship.Reason == HardReason.ExposedEntry && hardship.Bar == 1).Sum(hardship => hardship.Points);
    }

    private static string[] Reasons(string line, Func<PartNote, PartNote>? change = null, LookQuestion? question = null) =>
        [.. Look(line, change, question).Hardships.Select(hardship => HardReasonData.Words(hardship.Reason)).Distinct()];

    private static LineLook Look(string line, Func<PartNote, PartNote>? change = null, LookQuestion? question = null)
    {
        Score score = Scored.Of(Scored.Part("P1", "Soprano", "G2", Scored.Line(line, change)));
        return ScoreLook.Of(score, ScoreMap.Guess(score, [Soprano]), question ?? LookQuestion.Plain).Lines[0];
    }
}
