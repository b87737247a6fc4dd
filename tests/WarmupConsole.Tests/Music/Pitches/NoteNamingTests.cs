using CsCheck;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Tests.Music.Pitches;

public sealed class NoteNamingTests
{
    private static readonly Gen<Pitch> AnyPitch =
        Gen.Select(Gen.Enum<Step>(), Gen.Int[-2, 2], Gen.Int[-1, 9], (step, alteration, octave) => new Pitch(step, alteration, octave));

    public static TheoryData<string> Namings => [.. NoteNaming.All.Select(naming => naming.Id)];

    // Octave names: the Helmholtz system as in general music dictionaries; LilyPond manual, "Absolute octave entry", for c to c'''.
    // Contra C is C, in Helmholtz and C1 in German names; German c1 (eingestrichen) is middle C.
    [Theory]
    [InlineData("C1", "C,", "C1", "Do1")]
    [InlineData("C2", "C", "C", "Do2")]
    [InlineData("C3", "c", "c", "Do3")]
    [InlineData("C4", "c'", "c1", "Do4")]
    [InlineData("C5", "c''", "c2", "Do5")]
    [InlineData("C6", "c'''", "c3", "Do6")]
    [InlineData("B3", "b", "h", "Si3")]
    [InlineData("B2", "B", "H", "Si2")]
    public void Octaves_are_named_as_in_the_books(string scientific, string helmholtz, string german, string fixedDo)
    {
        Pitch pitch = Pitch.Parse(scientific);
        Assert.Equal(
            (scientific, helmholtz, german, fixedDo),
            (NoteNaming.Scientific.Write(pitch), NoteNaming.Helmholtz.Write(pitch), NoteNaming.German.Write(pitch), NoteNaming.FixedDo.Write(pitch)));
    }

    // Note names: LilyPond manual, "Note names in other languages" (deutsch, nederlands, italiano); Asas beside Ases, Heses: German usage.
    [Theory]
    [InlineData("B3", "H", "B", "Si")]
    [InlineData("Bb3", "B", "Bes", "Si♭")]
    [InlineData("Bbb3", "Heses", "Beses", "Si♭♭")]
    [InlineData("B#3", "His", "Bis", "Si♯")]
    [InlineData("Eb4", "Es", "Es", "Mi♭")]
    [InlineData("Ebb4", "Eses", "Eses", "Mi♭♭")]
    [InlineData("Ab4", "As", "As", "La♭")]
    [InlineData("Abb4", "Asas", "Ases", "La♭♭")]
    [InlineData("F#4", "Fis", "Fis", "Fa♯")]
    [InlineData("F##4", "Fisis", "Fisis", "Fa♯♯")]
    [InlineData("Cb4", "Ces", "Ces", "Do♭")]
    [InlineData("G#4", "Gis", "Gis", "Sol♯")]
    [InlineData("Db4", "Des", "Des", "Re♭")]
    public void Notes_are_named_as_in_their_language(string scientific, string german, string dutch, string fixedDo)
    {
        Pitch pitch = Pitch.Parse(scientific);
        Assert.Equal(
            (german, dutch, fixedDo),
            (NoteNaming.German.WriteName(pitch), NoteNaming.Dutch.WriteName(pitch), NoteNaming.FixedDo.WriteName(pitch)));
    }

    /// <summary>The same letters, another note: the setting alone decides. Sounding MIDI numbers after LilyPond: h 59, b 58, si 59, sib 58.</summary>
    [Theory]
    [InlineData("scientific", "B3", 59)]
    [InlineData("german", "b", 58)]
    [InlineData("german", "h", 59)]
    [InlineData("dutch", "b", 59)]
    [InlineData("dutch", "bes", 58)]
    [InlineData("fixed-do", "si3", 59)]
    [InlineData("fixed-do", "sib3", 58)]
    [InlineData("helmholtz", "b", 59)]
    [InlineData("helmholtz", "bb", 58)]
    [InlineData("scientific", "c1", 24)]
    [InlineData("german", "c1", 60)]
    [InlineData("german", "C1", 24)]
    [InlineData("helmholtz", "c1", 60)]
    [InlineData("helmholtz", "C", 36)]
    [InlineData("german", "heses", 57)]
    public void Ambiguous_input_follows_the_setting(string naming, string typed, int midi)
    {
        Assert.True(NoteNaming.All.Single(any => any.Id == naming).TryParse(typed, out Pitch pitch));
        Assert.Equal(midi, pitch.Midi);
    }

    [Theory]
    [InlineData("german", "ases1", "Abb4")]
    [InlineData("german", "c'", "C4")]
    [InlineData("german", "c″", "C5")]
    [InlineData("german", "Es", "Eb2")]
    [InlineData("dutch", "ees1", "Eb4")]
    [InlineData("dutch", "aes", "Ab3")]
    [InlineData("fixed-do", "ré4", "D4")]
    [InlineData("fixed-do", "FA#5", "F#5")]
    [InlineData("fixed-do", "fad5", "F#5")]
    [InlineData("fixed-do", "sols3", "G#3")]
    [InlineData("fixed-do", "mibb4", "Ebb4")]
    [InlineData("helmholtz", "f#''", "F#5")]
    [InlineData("helmholtz", "f♯″", "F#5")]
    [InlineData("helmholtz", "D,", "D1")]
    [InlineData("helmholtz", " e♭' ", "Eb4")]
    public void Usual_other_spellings_are_read(string naming, string typed, string scientific)
    {
        Assert.True(NoteNaming.All.Single(any => any.Id == naming).TryParse(typed, out Pitch pitch));
        Assert.Equal(Pitch.Parse(scientific), pitch);
    }

    [Theory]
    [InlineData("german", "hes1")]
    [InlineData("german", "ees1")]
    [InlineData("german", "aes1")]
    [InlineData("german", "eb1")]
    [InlineData("german", "c7")]
    [InlineData("german", "C4")]
    [InlineData("german", "C'")]
    [InlineData("dutch", "h1")]
    [InlineData("scientific", "H4")]
    [InlineData("scientific", "C")]
    [InlineData("scientific", "c'")]
    [InlineData("scientific", "C10")]
    [InlineData("fixed-do", "do")]
    [InlineData("fixed-do", "c4")]
    [InlineData("helmholtz", "c,")]
    [InlineData("helmholtz", "c'x")]
    [InlineData("helmholtz", "")]
    public void What_the_setting_does_not_know_is_no_pitch(string naming, string typed) =>
        Assert.False(NoteNaming.All.Single(any => any.Id == naming).TryParse(typed, out _));

    [Theory]
    [MemberData(nameof(Namings))]
    public void What_is_written_reads_back(string id)
    {
        NoteNaming naming = NoteNaming.All.Single(any => any.Id == id);
        AnyPitch.Sample(pitch =>
        {
            Assert.True(naming.TryParse(naming.Write(pitch), out Pitch back));
            Assert.Equal(pitch, back);
            Assert.True(naming.TryParseName(naming.WriteName(pitch), out Pitch name));
            Assert.Equal((pitch.Step, pitch.Alteration, 4), (name.Step, name.Alteration, name.Octave));
        });
    }

    [Theory]
    [MemberData(nameof(Namings))]
    public void No_two_notes_are_written_alike(string id)
    {
        NoteNaming naming = NoteNaming.All.Single(any => any.Id == id);
        Pitch[] all = [.. from step in Enum.GetValues<Step>() from alteration in Enumerable.Range(-2, 5) from octave in Enumerable.Range(-1, 11) select new Pitch(step, alteration, octave)];
        Assert.Equal(all.Length, all.Select(naming.Write).Distinct().Count());
    }

    [Fact]
    public void Scientific_names_are_those_of_the_files() => AnyPitch.Sample(pitch =>
    {
        Assert.Equal(pitch.ToString(), NoteNaming.Scientific.Write(pitch));
        Assert.Equal(pitch.Name, NoteNaming.Scientific.WriteName(pitch));
    });
}
