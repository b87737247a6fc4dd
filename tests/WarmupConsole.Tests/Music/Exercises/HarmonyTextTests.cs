using CsCheck;
using WarmupConsole.Music.Exercises;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Rhythm;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Text;

namespace WarmupConsole.Tests.Music.Exercises;

public class HarmonyTextTests
{
    private static readonly string[] Numerals = ["I", "ii", "iii", "IV", "V", "V7", "vi", "viio", "viio7", "bVII", "#ivo", "i", "iv", "VI", "ii7"];

    private static readonly Gen<HarmonyChord> AnyChord = Gen.Select(
        Gen.OneOf(Numerals), Gen.Long[1, 64 * Beats.TicksPerBeat], (numeral, ticks) => new HarmonyChord(numeral, new(ticks)));

    // Common practice; V7 as tonal and music21 spell it.
    [Theory]
    [InlineData("C4", Mode.Major, "I", "C E G")]
    [InlineData("C4", Mode.Major, "I7", "C E G B")]
    [InlineData("C4", Mode.Major, "ii", "D F A")]
    [InlineData("C4", Mode.Major, "ii7", "D F A C")]
    [InlineData("C4", Mode.Major, "IV7", "F A C E")]
    [InlineData("Db4", Mode.Major, "V7", "A♭ C E♭ G♭")]
    [InlineData("C4", Mode.Major, "viio", "B D F")]
    [InlineData("C4", Mode.Major, "viio7", "B D F A♭")]
    [InlineData("C4", Mode.Major, "bVII", "B♭ D F")]
    [InlineData("C4", Mode.Major, "II", "D F♯ A")]
    [InlineData("A3", Mode.Minor, "i", "A C E")]
    [InlineData("A3", Mode.Minor, "V7", "E G♯ B D")]
    [InlineData("A3", Mode.Minor, "VI", "F A C")]
    [InlineData("A3", Mode.Minor, "VII", "G B D")]
    [InlineData("A3", Mode.Minor, "viio", "G♯ B D")]
    [InlineData("G3", Mode.Lydian, "V7", "D F♯ A C")]
    public void Roman_numerals_become_chords_spelled_in_the_key(string tonic, Mode mode, string numeral, string chord)
    {
        Assert.True(RomanNumeral.TryParse(numeral, out RomanNumeral roman));
        Assert.Equal(chord, string.Join(' ', roman.Tones(mode).Select(tone => Pitch.Parse(tonic).Transpose(tone).Name)));
    }

    [Theory]
    [InlineData("")]
    [InlineData("VIII")]
    [InlineData("iV")]
    [InlineData("Io")]
    [InlineData("V9")]
    [InlineData("bbVII")]
    [InlineData("b#V")]
    [InlineData("7")]
    [InlineData("H")]
    public void What_is_no_numeral_is_refused(string numeral) => Assert.False(RomanNumeral.TryParse(numeral, out _));

    [Fact]
    public void A_course_of_chords_is_read() =>
        Assert.Equal(
            [new("I", Beats.FromBeats(2)), new("V7", Beats.FromFraction(3, 2)), new("I", Beats.FromBeats(1))],
            HarmonyText.Parse("I:2 V7:3/2 | I").Value!);

    [Fact]
    public void Faults_are_reported_at_their_places() =>
        Assert.Equal(
            [new(0, 3, MusicTextErrors.Numeral("X")), new(7, 1, MusicTextErrors.Beats("0"))],
            HarmonyText.Parse("X:2 V7:0").Errors);

    [Fact]
    public void No_chord_at_all_is_refused() => Assert.Equal(new(0, 0, MusicTextErrors.EmptyHarmony), Assert.Single(HarmonyText.Parse("").Errors));

    [Fact]
    public void Chords_must_fill_the_pattern()
    {
        Assert.True(HarmonyText.Parse("I:2 V7:2 I:3", Beats.FromBeats(7)).Ok);
        Assert.Equal(
            "The chords last 4 beats and the pattern 7: give them the same length.",
            Assert.Single(HarmonyText.Parse("I:2 V7:2", Beats.FromBeats(7)).Errors).Message);
    }

    [Fact]
    public void What_is_written_reads_back() => AnyChord.Array[1, 12].Sample(chords =>
        Assert.Equal(chords, HarmonyText.Parse(HarmonyText.Write(chords)).Value!));
}
