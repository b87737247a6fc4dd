using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Tests.Music.Pitches;

public class TuningTests
{
    // f = 440 * 2^((m-69)/12), A4 = 440 Hz by ISO 16:1975; C4 and A4 confirmed with tonal and music21, the rest by the formula.
    public static TheoryData<int, double[]> Octaves => new()
    {
        { 36, [65.4064, 69.2957, 73.4162, 77.7817, 82.4069, 87.3071, 92.4986, 97.9989, 103.8262, 110.0000, 116.5409, 123.4708] },
        { 48, [130.8128, 138.5913, 146.8324, 155.5635, 164.8138, 174.6141, 184.9972, 195.9977, 207.6523, 220.0000, 233.0819, 246.9417] },
        { 60, [261.6256, 277.1826, 293.6648, 311.1270, 329.6276, 349.2282, 369.9944, 391.9954, 415.3047, 440.0000, 466.1638, 493.8833] },
        { 72, [523.2511, 554.3653, 587.3295, 622.2540, 659.2551, 698.4565, 739.9888, 783.9909, 830.6094, 880.0000, 932.3275, 987.7666] },
        { 84, [1046.5023] },
    };

    [Theory]
    [MemberData(nameof(Octaves))]
    public void Frequencies_follow_iso_16(int midiOfC, double[] hertz)
    {
        for (int i = 0; i < hertz.Length; i++)
        {
            Assert.Equal(hertz[i], Tuning.Iso16.FrequencyHertz(midiOfC + i), 0.00006);
        }
    }

    // Arithmetic on the definition of the cent: 5 cents at A4 are 1.273 Hz, 100 cents 26.164 Hz.
    [Fact]
    public void A_semitone_above_a4_is_26_hertz_away() =>
        Assert.Equal(26.164, Tuning.Iso16.FrequencyHertz(70) - Tuning.Iso16.FrequencyHertz(69), 0.001);

    [Fact]
    public void Another_a4_moves_every_note_in_proportion() =>
        Assert.Equal(Tuning.Iso16.FrequencyHertz(60) * 415 / 440, Tuning.FromA4Hertz(415).FrequencyHertz(60), 1e-9);

    [Theory]
    [InlineData(379.9)]
    [InlineData(480.1)]
    public void An_a4_that_no_piano_has_is_refused(double hertz) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Tuning.FromA4Hertz(hertz));
}
