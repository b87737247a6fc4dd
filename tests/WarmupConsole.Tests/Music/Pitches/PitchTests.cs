using CsCheck;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Tests.Music.Pitches;

public class PitchTests
{
    private static readonly Gen<Pitch> AnyPitch =
        Gen.Select(Gen.Enum<Step>(), Gen.Int[-2, 2], Gen.Int[0, 8], (step, alteration, octave) => new Pitch(step, alteration, octave));

    private static readonly Gen<Interval> AnyInterval =
        Gen.Select(Gen.Int[-14, 14], Gen.Int[-1, 1], (steps, off) => new Interval(steps, (int)Math.Round(steps * 12 / 7.0) + off));

    // MIDI 69 = A4 and 60 = C4 are common practice; the octave number changes at C (scientific pitch notation).
    [Theory]
    [InlineData("C4", 60)]
    [InlineData("A4", 69)]
    [InlineData("C-1", 0)]
    [InlineData("G9", 127)]
    [InlineData("A0", 21)]
    [InlineData("C8", 108)]
    [InlineData("C1", 24)]
    [InlineData("C2", 36)]
    [InlineData("C6", 84)]
    public void The_midi_number_follows_scientific_pitch_notation(string text, int midi) => Assert.Equal(midi, Pitch.Parse(text).Midi);

    // Checked in LilyPond 2.24: ces' 59, his 60; heses 57 from h.
    [Theory]
    [InlineData("Cb4", "B3")]
    [InlineData("B#3", "C4")]
    [InlineData("B#4", "C5")]
    [InlineData("E#4", "F4")]
    [InlineData("Fb4", "E4")]
    [InlineData("Bbb3", "A3")]
    [InlineData("F##5", "G5")]
    public void Enharmonic_pitches_sound_alike_and_stay_different(string written, string sounding)
    {
        Assert.Equal(Pitch.Parse(sounding).Midi, Pitch.Parse(written).Midi);
        Assert.NotEqual(Pitch.Parse(sounding), Pitch.Parse(written));
    }

    // tonal 6.4: C4+m2 = Db4, C4+A1 = C#4, B4+M3 = D#5.
    [Theory]
    [InlineData("C4", 1, 1, "D♭4")]
    [InlineData("C4", 0, 1, "C♯4")]
    [InlineData("B4", 2, 4, "D♯5")]
    [InlineData("C4", -1, -1, "B3")]
    [InlineData("F4", 3, 6, "B4")]
    [InlineData("F4", 4, 6, "C♭5")]
    public void Transposing_spells_by_letter_names(string from, int steps, int semitones, string to) =>
        Assert.Equal(to, Pitch.Parse(from).Transpose(new(steps, semitones)).ToString());

    [Theory]
    [InlineData("H4")]
    [InlineData("C")]
    [InlineData("C10")]
    [InlineData("C####4")]
    [InlineData("")]
    [InlineData("4C")]
    public void What_is_no_pitch_is_refused_with_an_example(string text)
    {
        Assert.False(Pitch.TryParse(text, out _));
        FormatException error = Assert.Throws<FormatException>(() => Pitch.Parse(text));
        Assert.Contains("such as C4, Bb3 or F#5", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void There_and_back_keeps_the_spelling() => Gen.Select(AnyPitch, AnyInterval).Sample((pitch, interval) =>
        Assert.Equal(pitch, pitch.Transpose(interval).Transpose(-interval)));

    [Fact]
    public void The_interval_between_two_pitches_leads_from_one_to_the_other() => Gen.Select(AnyPitch, AnyPitch).Sample((from, to) =>
        Assert.Equal(to, from.Transpose(Interval.Between(from, to))));

    [Fact]
    public void Two_intervals_one_after_the_other_are_their_sum() => Gen.Select(AnyPitch, AnyInterval, AnyInterval).Sample((pitch, a, b) =>
        Assert.Equal(pitch.Transpose(a).Transpose(b), pitch.Transpose(a + b)));

    [Fact]
    public void What_is_written_for_files_reads_back() => AnyPitch.Sample(pitch => Assert.Equal(pitch, Pitch.Parse(pitch.ToAscii())));

    [Fact]
    public void Pitches_are_ordered_by_sound_then_by_letter()
    {
        Assert.True(Pitch.Parse("B#3") < Pitch.Parse("C4"));
        Assert.True(Pitch.Parse("Cb4") < Pitch.Parse("C4"));
        Assert.True(Pitch.Parse("C4") <= Pitch.MiddleC && Pitch.Parse("C4") >= Pitch.MiddleC);
        Assert.True(Pitch.Parse("D4") > Pitch.MiddleC);
    }
}
