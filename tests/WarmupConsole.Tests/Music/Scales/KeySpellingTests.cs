using CsCheck;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;

namespace WarmupConsole.Tests.Music.Scales;

public class KeySpellingTests
{
    // Fewest accidentals; a tie (six flats, six sharps) goes to the flats.
    [Theory]
    [InlineData(Mode.Major, "C D♭ D E♭ E F G♭ G A♭ A B♭ B")]
    [InlineData(Mode.Minor, "C C♯ D E♭ E F F♯ G G♯ A B♭ B")]
    [InlineData(Mode.HarmonicMinor, "C C♯ D E♭ E F F♯ G G♯ A B♭ B")]
    [InlineData(Mode.Dorian, "C C♯ D E♭ E F F♯ G A♭ A B♭ B")]
    public void Twelve_tonics_are_named_with_the_fewest_accidentals(Mode mode, string names) =>
        Assert.Equal(names, string.Join(' ', Enumerable.Range(60, 12).Select(midi => KeySpelling.TonicFor(midi, mode).Name)));

    [Fact]
    public void The_named_tonic_sounds_as_it_was_asked_in_every_octave_and_mode() =>
        Gen.Select(Gen.Int[0, 127], Gen.Enum<Mode>()).Sample((midi, mode) =>
            Assert.Equal(midi, KeySpelling.TonicFor(midi, mode).Midi));

    [Fact]
    public void No_other_name_has_a_shorter_signature() =>
        Gen.Select(Gen.Int[24, 96], Gen.Enum<Mode>(), Gen.Enum<Step>(), Gen.Int[-1, 1]).Sample((midi, mode, step, alteration) =>
        {
            Pitch other = new(step, alteration, 4);
            int fifths = Math.Abs(Key.Of(KeySpelling.TonicFor(midi, mode), mode).Fifths);
            Assert.True((other.Midi - midi) % 12 != 0 || fifths <= Math.Abs(Key.Of(other, mode).Fifths));
        });
}
