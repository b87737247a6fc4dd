using CsCheck;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Tests.Sessions.Marks;

public sealed class MarkGrammarTests
{
    private static readonly MarkAnchor InDFlat = new(0, 0, Pitch.Parse("Db4"), default(Moment));

    /// <summary>Typed, parts, strength and kind, and where: key, pitch, place.</summary>
    public static TheoryData<string, string, string, string> Understood => new()
    {
        { "a f", "alto", "flat", "" },
        { "A F", "alto", "flat", "" },
        { "altos flat", "alto", "flat", "" },
        { "alto flat", "alto", "flat", "" },
        { "altos flat in E", "alto", "flat", "in E" },
        { "altos flat in e flat", "alto", "flat", "in E♭" },
        { "altos flat in Eb", "alto", "flat", "in E♭" },
        { "altos flat in E♭", "alto", "flat", "in E♭" },
        { "altos flat in a flat", "alto", "flat", "in A♭" },
        { "altos flat in a", "alto", "flat", "in A" },
        { "altos flat in a coming down", "alto", "flat", "in A | coming down" },
        { "altos flat in a hurry", "alto", "flat", "in a hurry" },
        { "altos flat in the key of F sharp", "alto", "flat", "in F♯" },
        { "altos flat in D major", "alto", "flat", "in D" },
        { "altos flat in C5", "alto", "flat", "in C" },
        { "s s", "soprano", "sharp", "" },
        { "s s in b", "soprano", "sharp", "in B" },
        { "s a s", "soprano alto", "sharp", "" },
        { "s a flat", "soprano alto", "flat", "" },
        { "sa flat", "soprano alto", "flat", "" },
        { "s/a flat", "soprano alto", "flat", "" },
        { "s, a: flat", "soprano alto", "flat", "" },
        { "a s flat", "soprano alto", "flat", "" },
        { "satb good", "", "good", "" },
        { "tenors and basses sharp", "tenor bass", "sharp", "" },
        { "tenors & basses sharp on Ab3", "tenor bass", "sharp", "at A♭3" },
        { "tb sharp at the ab3 in Db", "tenor bass", "sharp", "in D♭ | at A♭3" },
        { "women breathy", "soprano alto", "breathy", "" },
        { "the men late", "tenor bass", "late", "" },
        { "women and tenors dark", "soprano alto tenor", "dark", "" },
        { "all tired", "", "tired", "" },
        { "everyone early", "", "early", "" },
        { "choir u", "", "uneven", "" },
        { "the choir scooping", "", "scooping", "" },
        { "flat", "", "flat", "" },
        { "f in G", "", "flat", "in G" },
        { "flat altos", "alto", "flat", "" },
        { "flat basses and tenors in D", "tenor bass", "flat", "in D" },
        { "flat a little", "", "slightly flat", "" },
        { "a bit sharp", "", "slightly sharp", "" },
        { "altos a bit sharp", "alto", "slightly sharp", "" },
        { "a a bit f", "alto", "slightly flat", "" },
        { "very flat", "", "very flat", "" },
        { "tenors slightly late", "tenor", "slightly late", "" },
        { "slightly late", "", "slightly late", "" },
        { "altos a little too flat in E", "alto", "slightly flat", "in E" },
        { "basses much too late", "bass", "very late", "" },
        { "sopranos quite strained", "soprano", "rather strained", "" },
        { "altos flat a lot in E", "alto", "very flat", "in E" },
        { "s strained very at the top", "soprano", "very strained", "top" },
        { "flat too", "", "flat", "too" },
        { "altos still flat", "alto", "flat", "still" },
        { "altos went a bit flat", "alto", "slightly flat", "" },
        { "altos under pitch", "alto", "flat", "" },
        { "basses are flat", "bass", "flat", "" },
        { "s strained on A5", "soprano", "strained", "at A5" },
        { "s st at a5", "soprano", "strained", "at A5" },
        { "s st at a flat 5", "soprano", "strained", "at A♭5" },
        { "a f at the c#5", "alto", "flat", "at C♯5" },
        { "b p on Bb3", "bass", "pressed", "at B♭3" },
        { "a f on D", "alto", "flat", "on D" },
        { "s f on B", "soprano", "flat", "at B4" },
        { "a f on e flat", "alto", "flat", "on E♭" },
        { "tenors flat on B", "tenor", "flat", "at B3" },
        { "a f on 5", "alto", "flat", "degree 5" },
        { "a f on the 5th", "alto", "flat", "degree 5" },
        { "a f degree b3", "alto", "flat", "degree b3" },
        { "a f on #4", "alto", "flat", "degree #4" },
        { "a f third", "alto", "flat", "degree 3" },
        { "a f on the third coming down", "alto", "flat", "degree 3, coming down" },
        { "a f on sol", "alto", "flat", "degree 5" },
        { "s thin top", "soprano", "thin", "top" },
        { "s thin at the top in F", "soprano", "thin", "in F | top" },
        { "s thin at top", "soprano", "thin", "top" },
        { "s thin at the top", "soprano", "thin", "top" },
        { "s thin at the very top", "soprano", "thin", "top" },
        { "s thin near the top", "soprano", "thin", "top" },
        { "b flat at the end", "bass", "flat", "end" },
        { "b flat at end", "bass", "flat", "end" },
        { "b flat in the middle", "bass", "flat", "middle" },
        { "tenors late on entry", "tenor", "late", "start" },
        { "altos flat in Fmaj", "alto", "flat", "in F" },
        { "altos flat in F maj", "alto", "flat", "in F" },
        { "altos flat in F major", "alto", "flat", "in F" },
        { "altos flat in F minor", "alto", "flat", "in F" },
        { "altos flat in a minor", "alto", "flat", "in A" },
        { "altos flat in f#", "alto", "flat", "in F♯" },
        { "altos flat in f#m", "alto", "flat", "in F♯" },
        { "altos flat in F-sharp major", "alto", "flat", "in F♯" },
        { "altos flat in E-flat", "alto", "flat", "in E♭" },
        { "altos flat in Bbmaj going up", "alto", "flat", "in B♭ | going up" },
        { "altos flat in a mess", "alto", "flat", "in a mess" },
        { "altos flat, coming down", "alto", "flat", "coming down" },
        { "second time, altos flat", "alto", "flat", "second time" },
        { "sopranos thin, over the break", "soprano", "thin", "over the break" },
        { "altos flat, tenors wobbly in E", "alto", "flat", "tenors wobbly in e" },
        { "altos flat, a whole tone", "alto", "flat", "a whole tone" },
        { "altos flat, tenors too", "alto tenor", "flat", "" },
        { "flat basses and tenors coming down in D", "tenor bass", "flat", "in D | coming down" },
        { "flat a short time", "", "flat", "a short time" },
        { "sop. flat.", "soprano", "flat", "" },
        { "a f going up", "alto", "flat", "going up" },
        { "a f on the way down", "alto", "flat", "coming down" },
        { "t sc on the leap", "tenor", "scooping", "on the leap" },
        { "t late start", "tenor", "late", "start" },
        { "b flat end", "bass", "flat", "end" },
        { "a sb", "alto", "short-of-breath", "" },
        { "altos short of breath", "alto", "short-of-breath", "" },
        { "altos out of breath in C", "alto", "short-of-breath", "in C" },
        { "a easy", "alto", "easy", "" },
        { "a v", "alto", "vowel", "" },
        { "a bl", "alto", "blend", "" },
        { "t swallowed", "tenor", "swallowed", "" },
        { "t sw in C", "tenor", "swallowed", "in C" },
        { "altos flat again", "alto", "flat", "again" },
        { "altos flat!", "alto", "flat", "" },
        { "  altos \t flat  ", "alto", "flat", "" },
        { "al\u0007tos", "", "", "" },
    };

    public static TheoryData<string> FreeNotes =>
        ["", " ", "s", "t in E", "altos", "altos wobbly in E", "check the folders", "windows please", "in E", "at A4", "women", "as before", "\u001b[2J", "altos in E flat"];

    [Theory, MemberData(nameof(Understood))]
    public void A_line_is_understood(string raw, string parts, string kind, string where)
    {
        MarkContent mark = One(raw, SampleChoir.Four);
        Assert.Equal(raw, mark.Raw);
        Assert.Equal((parts, kind, where), (string.Join(' ', mark.PartIds), $"{mark.Strength} {mark.KindId}".Trim(), Where(mark)));
    }

    /// <summary>A line, and each of its marks as parts, strength and kind, and where.</summary>
    [Theory]
    [InlineData("s f, a s", "soprano|flat", "alto|sharp")]
    [InlineData("s s, a f", "soprano|sharp", "alto|flat")]
    [InlineData("s f a s", "soprano|flat", "alto|sharp")]
    [InlineData("s f; a s in E", "soprano|flat", "alto|sharp|in E")]
    [InlineData("sa f, tb s", "soprano alto|flat", "tenor bass|sharp")]
    [InlineData("s, a f; t and b l", "soprano alto|flat", "tenor bass|late")]
    [InlineData("altos flat and late", "alto|flat", "alto|late")]
    [InlineData("altos a bit flat and very late", "alto|slightly flat", "alto|very late")]
    [InlineData("altos flat and late in E", "alto|flat|in E", "alto|late|in E")]
    [InlineData("altos flat in E and late", "alto|flat|in E", "alto|late")]
    [InlineData("flat and late", "|flat", "|late")]
    [InlineData("altos flat, tenors late", "alto|flat", "tenor|late")]
    [InlineData("altos flat tenors late", "alto|flat", "tenor|late")]
    [InlineData("altos flat, tenors late in E", "alto|flat", "tenor|late|in E")]
    [InlineData("altos flat. Tenors late.", "alto|flat", "tenor|late")]
    [InlineData("altos flat but sopranos good", "alto|flat", "soprano|good")]
    [InlineData("flat altos, late tenors", "alto|flat", "tenor|late")]
    [InlineData("altos flat in C and D", "alto|flat|in C", "alto|flat|in D")]
    [InlineData("altos flat on C4 and D4", "alto|flat|at C4", "alto|flat|at D4")]
    [InlineData("altos flat in E, b flat", "alto|flat|in E", "bass|flat")]
    [InlineData("a f, t l, b good", "alto|flat", "tenor|late", "bass|good")]
    public void One_line_may_hold_several_marks(string raw, params string[] marks) => Assert.Equal(
        marks.Select(mark => (raw, mark)),
        MarkGrammar.Parse(raw, SampleChoir.Four).Select(mark => (mark.Raw, $"{string.Join(' ', mark.PartIds)}|{$"{mark.Strength} {mark.KindId}".Trim()}|{Where(mark)}".TrimEnd('|'))));

    [Fact]
    public void A_name_with_a_comma_word_in_it_is_not_cut()
    {
        Choir choir = SampleChoir.Four with { OwnMarkKinds = [new("loud", "loud and coarse", [], false)] };
        Assert.Equal("loud", One("altos loud and coarse", choir).KindId);
    }

    [Theory, MemberData(nameof(FreeNotes))]
    public void What_names_no_kind_is_a_free_note(string raw) =>
        Assert.Equal((raw, true, 0, ""), (One(raw, SampleChoir.Four) is var mark ? mark.Raw : "", mark.IsFreeNote, mark.PartIds.Count, mark.Place));

    [Theory]
    [InlineData("s f", "soprano-1 soprano-2")]
    [InlineData("sopranos flat", "soprano-1 soprano-2")]
    [InlineData("s2 f", "soprano-2")]
    [InlineData("soprano 1 flat", "soprano-1")]
    [InlineData("soprano-1 and alto flat", "soprano-1 alto")]
    public void Halves_of_a_divided_part_answer_together_and_alone(string raw, string parts) =>
        Assert.Equal(parts, string.Join(' ', One(raw, SampleChoir.Divided).PartIds));

    [Theory]
    [InlineData("altos flat in E", "altos flat in E")]
    [InlineData("a f", "altos flat in D♭")]
    [InlineData("tb s at Ab3", "tenors and basses sharp on A♭3 (in D♭)")]
    [InlineData("flat on the third", "everyone flat on degree 3 in D♭")]
    [InlineData("s st top", "sopranos strained at the top in D♭")]
    [InlineData("sab g coming down", "sopranos, altos and basses good coming down in D♭")]
    [InlineData("a bit f in E", "everyone slightly flat in E")]
    [InlineData("s very short of breath", "sopranos very short of breath in D♭")]
    [InlineData("t late in the middle", "tenors late in the middle in D♭")]
    [InlineData("a v again", "altos off in the vowel \"again\" in D♭")]
    [InlineData("windows please", "noted: windows please")]
    [InlineData("a\u001b[31m red\u202e", "noted: a [31m red")]
    public void The_echo_says_how_it_was_understood(string raw, string echo) =>
        Assert.Equal(echo, MarkWords.Echo(One(raw, SampleChoir.Four), InDFlat, SampleChoir.Four));

    [Fact]
    public void A_step_without_keys_has_no_key_in_its_echo() =>
        Assert.Equal("everyone tired", MarkWords.Echo(One("tired", SampleChoir.Four), InDFlat with { Tonic = null }, SampleChoir.Four));

    [Fact]
    public void No_text_makes_it_throw_and_nothing_typed_is_lost() => Gen.OneOf(Gen.String, WordSalad).Sample(raw =>
    {
        IReadOnlyList<MarkContent> marks = MarkGrammar.Parse(raw, SampleChoir.Four);
        return marks.Count > 0 && marks.All(mark => mark.Raw == raw && MarkWords.Echo(mark, InDFlat, SampleChoir.Four) is var echo
            && !echo.Any(char.IsControl) && (!mark.IsFreeNote || (marks.Count == 1 && echo.StartsWith(raw.Length == 0 ? "pinned in " : "noted: ", StringComparison.Ordinal))));
    });

    [Fact]
    public void Every_kind_is_reached_by_id_words_and_each_spelling_after_a_part()
    {
        foreach (MarkKind kind in MarkKindData.Of(SampleChoir.Four))
        {
            Assert.All([kind.Id, kind.Words, .. kind.Spellings], spelling => Assert.Equal(kind.Id, One("t " + spelling, SampleChoir.Four).KindId));
        }
    }

    [Fact]
    public void No_spelling_means_two_usual_kinds()
    {
        string[] all = [.. MarkKindData.Usual.SelectMany(kind => kind.Spellings.Append(kind.Id))];
        Assert.Equal(all.Distinct().Count(), all.Length);
    }

    private static readonly string[] Salad =
    [
        "a", "s", "altos", "men", "f", "flat", "in", "at", "on", "the", "e", "bb", "c#5", "5", "b3", "top", "coming", "down", "degree", "and", "wobbly", "\0", "😀", "sharp", "key", "of", ",", "but", "very", "bit", "too", "late", "still",
    ];

    private static MarkContent One(string raw, Choir choir) => Assert.Single(MarkGrammar.Parse(raw, choir));

    private static string Where(MarkContent mark)
    {
        string[] found = [mark.Key is { } key ? "in " + key.Name : "", mark.Pitch is { } pitch ? $"at {pitch}" : "", mark.Place];
        return string.Join(" | ", found.Where(text => text.Length > 0));
    }

    private static Gen<string> WordSalad => Gen.Int[0, Salad.Length - 1].Array[0, 12].Select(picks => string.Join(' ', picks.Select(pick => Salad[pick])));

    /// <summary>Setting, typed, and how it is echoed: the same letters are other notes elsewhere.</summary>
    [Theory]
    [InlineData("scientific", "altos flat in b", "altos flat in B")]
    [InlineData("german", "altos flat in H", "altos flat in H")]
    [InlineData("german", "altos flat in b", "altos flat in B")]
    [InlineData("german", "altos flat in as", "altos flat in As")]
    [InlineData("german", "altos flat in as much", "altos flat \"in as much\" in Des")]
    [InlineData("german", "altos flat on c2", "altos flat on c2 (in Des)")]
    [InlineData("german", "altos flat on C2", "altos flat on c2 (in Des)")]
    [InlineData("german", "basses flat on c", "basses flat on c (in Des)")]
    [InlineData("german", "basses flat on H", "basses flat on H (in Des)")]
    [InlineData("german", "sopranos sharp on es 2", "sopranos sharp on Es \"2\" in Des")]
    [InlineData("german", "sopranos sharp on e flat 2", "sopranos sharp on es2 (in Des)")]
    [InlineData("dutch", "basses flat on bes", "basses flat on bes (in Des)")]
    [InlineData("helmholtz", "altos flat on f#'", "altos flat on f♯' (in D♭)")]
    [InlineData("fixed-do", "sopranos flat on fad5 in re", "sopranos flat on Fa♯5 (in Re)")]
    [InlineData("fixed-do", "sopranos flat in do", "sopranos flat in Do")]
    public void Notes_are_typed_and_echoed_as_the_choir_names_them(string notes, string raw, string echo)
    {
        Choir choir = SampleChoir.Four with { Notes = NoteNaming.All.Single(naming => naming.Id == notes) };
        Assert.Equal(echo, MarkWords.Echo(One(raw, choir), InDFlat, choir));
    }

    [Fact]
    public void In_German_names_B_is_the_B_flat_of_others()
    {
        Choir german = SampleChoir.Four with { Notes = NoteNaming.German };
        Assert.Equal((Pitch.Parse("Bb4"), Pitch.Parse("B4")), (One("a f in b", german).Key, One("a f in b", SampleChoir.Four).Key));
        Assert.StartsWith("on E♭", One("sopranos sharp on es 2", german).Place, StringComparison.Ordinal); // as every log names it
    }

    [Theory]
    [InlineData("Children", "children")]
    [InlineData("Bass", "basses")]
    [InlineData("Alto 2", "alto 2")]
    public void A_part_in_the_plural_is_named_as_everywhere_else(string name, string plural) =>
        Assert.Equal(plural, PartNames.Plural(SampleChoir.Four.Parts[0] with { Name = name }));
}
