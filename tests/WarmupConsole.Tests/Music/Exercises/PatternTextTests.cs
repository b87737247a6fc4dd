using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Text;

namespace WarmupConsole.Tests.Music.Exercises;

public class PatternTextTests
{
    private static readonly Gen<PatternNote> AnyNote = Gen.Select(
        Gen.Int[1, 7], Gen.Int[-2, 2], Gen.Int[-3, 2], Gen.Long[1, 64 * Beats.TicksPerBeat], Gen.Int[0, 4], (number, alteration, octave, ticks, rest) =>
            new PatternNote(rest == 0 ? null : new Degree(number, alteration, octave), new(ticks), null));

    private static readonly Gen<Pattern> AnyPattern = AnyNote.Array[0, 20].Select(notes =>
        new Pattern([new(Degree.Tonic, Beats.FromBeats(1), null), .. notes]));

    private static readonly Gen<Syllable?> AnySyllable =
        Gen.OneOf(new Syllable("noo", "u"), new Syllable("mah", "a"), new Syllable("hm", "")).Null();

    [Fact]
    public void The_five_note_scale_is_read()
    {
        Pattern pattern = PatternText.Parse(Samples.FiveNotes).Value!;

        Assert.Equal([1, 2, 3, 4, 5, 4, 3, 2, 1, null], pattern.Notes.Select(note => note.Degree?.Number));
        Assert.Equal(Beats.FromBeats(7), pattern.Length);
        Assert.Equal(Beats.FromFraction(3, 2), pattern.Notes[8].Length);
    }

    [Theory]
    [InlineData("1 | 2:2 | 1", "1 2:2 1")]
    [InlineData("do mi:1/2  so", "1 3:1/2 5")]
    [InlineData("\t1:0.25\n-:2 ", "1:1/4 -:2")]
    [InlineData("1:1", "1")]
    public void Bar_lines_spaces_and_sol_fa_come_out_plain(string text, string plain) =>
        Assert.Equal(plain, PatternText.Write(PatternText.Parse(text).Value!));

    [Fact]
    public void All_faults_are_reported_at_once_each_at_its_place()
    {
        Parsed<Pattern> parsed = PatternText.Parse("1 x:2 3:1/7 :1 -:0 y:z");

        Assert.False(parsed.Ok);
        Assert.Equal(
            [
                new(2, 1, MusicTextErrors.Degree("x")),
                new(8, 3, MusicTextErrors.Beats("1/7")),
                new(12, 2, MusicTextErrors.PatternWord(":1")),
                new(17, 1, MusicTextErrors.Beats("0")),
                new(21, 1, MusicTextErrors.Beats("z")),
                new(19, 1, MusicTextErrors.Degree("y")),
            ],
            parsed.Errors);
    }

    [Theory]
    [InlineData("")]
    [InlineData("- -:2 |")]
    public void A_pattern_without_a_sounding_note_is_refused(string text) =>
        Assert.Equal(new TextError(0, text.Length, MusicTextErrors.EmptyPattern), Assert.Single(PatternText.Parse(text).Errors));

    [Fact]
    public void A_pattern_without_end_is_refused()
    {
        Assert.True(PatternText.Parse(string.Join(' ', Enumerable.Repeat("1", PatternText.MostNotes))).Ok);
        Assert.Equal(
            MusicTextErrors.TooManyNotes(PatternText.MostNotes),
            Assert.Single(PatternText.Parse(string.Join(' ', Enumerable.Repeat("1", PatternText.MostNotes + 1))).Errors).Message);
    }

    [Fact]
    public void What_is_written_reads_back() => AnyPattern.Sample(pattern =>
        Assert.Equal(pattern.Notes, PatternText.Parse(PatternText.Write(pattern)).Value!.Notes));

    [Fact]
    public void Any_text_at_all_is_read_or_refused_with_places_inside_it() => Gen.String[Gen.Char["123b#,:/.-|~ doremi'9"], 0, 30].Sample(text =>
    {
        Parsed<Pattern> parsed = PatternText.Parse(text);
        Assert.Equal(parsed.Ok, parsed.Value is not null);
        Assert.All(parsed.Errors, error => Assert.InRange(error.Offset + error.Length, 0, text.Length));
    });

    [Fact]
    public void Syllables_that_are_written_read_back() =>
        Gen.Select(AnyPattern, AnySyllable.Array[21]).Sample((pattern, syllables) =>
        {
            Pattern sung = new([.. pattern.Notes.Select((note, i) => note with
            {
                Syllable = note.Degree is null ? null : i == 0 ? new("noo", "u") : syllables[i],
            })]);
            Assert.Equal(sung.Notes, SyllableText.Apply(pattern, SyllableText.Write(sung)).Value!.Notes);
        });
}
