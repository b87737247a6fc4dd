using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Tests.Music.Scales;

public class KeyTests
{
    // tonal 6.4 and music21 agree for all fifteen majors.
    [Theory]
    [InlineData("C", 0, "C D E F G A B", "G B D F")]
    [InlineData("G", 1, "G A B C D E F♯", "D F♯ A C")]
    [InlineData("D", 2, "D E F♯ G A B C♯", "A C♯ E G")]
    [InlineData("A", 3, "A B C♯ D E F♯ G♯", "E G♯ B D")]
    [InlineData("E", 4, "E F♯ G♯ A B C♯ D♯", "B D♯ F♯ A")]
    [InlineData("B", 5, "B C♯ D♯ E F♯ G♯ A♯", "F♯ A♯ C♯ E")]
    [InlineData("F#", 6, "F♯ G♯ A♯ B C♯ D♯ E♯", "C♯ E♯ G♯ B")]
    [InlineData("C#", 7, "C♯ D♯ E♯ F♯ G♯ A♯ B♯", "G♯ B♯ D♯ F♯")]
    [InlineData("F", -1, "F G A B♭ C D E", "C E G B♭")]
    [InlineData("Bb", -2, "B♭ C D E♭ F G A", "F A C E♭")]
    [InlineData("Eb", -3, "E♭ F G A♭ B♭ C D", "B♭ D F A♭")]
    [InlineData("Ab", -4, "A♭ B♭ C D♭ E♭ F G", "E♭ G B♭ D♭")]
    [InlineData("Db", -5, "D♭ E♭ F G♭ A♭ B♭ C", "A♭ C E♭ G♭")]
    [InlineData("Gb", -6, "G♭ A♭ B♭ C♭ D♭ E♭ F", "D♭ F A♭ C♭")]
    [InlineData("Cb", -7, "C♭ D♭ E♭ F♭ G♭ A♭ B♭", "G♭ B♭ D♭ F♭")]
    public void Majors_have_their_signature_scale_and_dominant_seventh(string tonic, int fifths, string scale, string dominantSeventh)
    {
        Key key = Key.Of(Pitch.Parse(tonic + "4"), Mode.Major);

        Assert.Equal(fifths, key.Fifths);
        Assert.Equal(scale, Names(key.Scale(4)));
        Assert.Equal(dominantSeventh, Names(key.DominantSeventh(4)));
    }

    // Common practice: a minor key shares the signature of the major a minor third above; the modes those of their relatives.
    [Theory]
    [InlineData("A", Mode.Minor, 0, "A B C D E F G")]
    [InlineData("C", Mode.Minor, -3, "C D E♭ F G A♭ B♭")]
    [InlineData("C#", Mode.HarmonicMinor, 4, "C♯ D♯ E F♯ G♯ A B♯")]
    [InlineData("D", Mode.MelodicMinor, -1, "D E F G A B C♯")]
    [InlineData("D", Mode.Dorian, 0, "D E F G A B C")]
    [InlineData("E", Mode.Phrygian, 0, "E F G A B C D")]
    [InlineData("F", Mode.Lydian, 0, "F G A B C D E")]
    [InlineData("G", Mode.Mixolydian, 0, "G A B C D E F")]
    public void Other_modes_have_their_signature_and_scale(string tonic, Mode mode, int fifths, string scale)
    {
        Key key = Key.Of(Pitch.Parse(tonic + "4"), mode);

        Assert.Equal(fifths, key.Fifths);
        Assert.Equal(scale, Names(key.Scale(4)));
    }

    [Fact]
    public void The_dominant_seventh_of_a_minor_key_has_the_raised_leading_note() =>
        Assert.Equal("E G♯ B D", Names(Key.Of(Pitch.Parse("A3"), Mode.Minor).DominantSeventh(3)));

    [Fact]
    public void D_flat_major_has_g_flat_and_not_f_sharp() =>
        Assert.Equal("G♭4", Key.Of(Pitch.Parse("Db4"), Mode.Major).PitchOf(new(4, 0, 0), 4).ToString());

    [Fact]
    public void A_key_is_shown_by_its_name() => Assert.Equal("D♭ harmonic minor", Key.Of(Pitch.Parse("Db4"), Mode.HarmonicMinor).ToString());

    private static string Names(IEnumerable<Pitch> pitches) => string.Join(' ', pitches.Select(pitch => pitch.Name));
}
