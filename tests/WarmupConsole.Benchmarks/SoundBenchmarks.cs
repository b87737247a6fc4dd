using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Sound;
using WarmupConsole.Midi.Synthesis;
using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Benchmarks;

/// <summary>The built-in tone: a block of 128 samples lasts 2.67 ms, so 27 µs of work are a hundredth of a core.</summary>
internal static class SoundBenchmarks
{
    private const int BlocksEach = 100;

    internal static IEnumerable<Benchmark> All => [Block(8), Block(32), Block(StringTone.MostVoices)];

    private static Benchmark Block(int voices)
    {
        StringTone tone = new(Tuning.Iso16, SoundPort.SampleRate);
        float[] samples = new float[SoundPort.BlockSamples];
        return new($"built-in tone, a block of {voices} notes", BlocksEach, () =>
        {
            tone.Silence();
            for (int i = 0; i < voices; i++)
            {
                tone.Handle(MidiMessage.NoteOn(0, 30 + i, 80));
            }

            for (int block = 0; block < BlocksEach; block++)
            {
                tone.Render(samples);
            }

            return (long)(samples[^1] * 1e6);
        });
    }
}
