using WarmupConsole.Midi.Messages;
using WarmupConsole.Midi.Sound;
using WarmupConsole.Midi.Synthesis;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Tests.Support;

namespace WarmupConsole.Tests.Midi.Synthesis;

public sealed class StringToneTests
{
    private const int Rate = SoundPort.SampleRate;
    private const int Window = 65536;

    /// <summary>A step larger than in the sound before it would be a click; the damper and the fade may add so much, of full scale.</summary>
    private const double AllowedStep = 0.005;

    [Theory]
    [InlineData(415)]
    [InlineData(440)]
    [InlineData(466)]
    public void Every_key_that_a_warm_up_plays_sounds_within_two_cents_of_its_pitch(double a4)
    {
        Tuning tuning = Tuning.FromA4Hertz(a4);
        for (int key = 36; key <= 88; key++)
        {
            StringTone tone = new(tuning, Rate);
            tone.Handle(MidiMessage.NoteOn(0, key, 68));
            float[] samples = Rendered(tone, Window);
            double cents = Spectrum.Cents(Spectrum.Peak(samples, Rate, tuning.FrequencyHertz(key)), tuning.FrequencyHertz(key));
            Assert.True(Math.Abs(cents) < 2, $"key {key} at A4 {a4}: {cents:0.00} cents");
        }
    }

    [Theory]
    [InlineData(415)]
    [InlineData(466)]
    public void FluidSynth_is_tuned_to_the_same_A4(double a4)
    {
        using FluidSynthSource fluid = Fluid(Tuning.FromA4Hertz(a4));
        fluid.Handle(MidiMessage.NoteOn(0, 69, 80));
        double hertz = Spectrum.Peak(Rendered(fluid, Window), Rate, a4);
        Assert.True(Math.Abs(Spectrum.Cents(hertz, a4)) < 6, $"{hertz:0.0} Hz"); // what the SoundFont's own A is away from 440
    }

    [Theory]
    [InlineData(415)]
    [InlineData(466)]
    public void The_messages_that_tune_a_device_do_so_in_FluidSynth(double a4)
    {
        using FluidSynthSource fluid = Fluid(Tuning.Iso16);
        foreach (MidiMessage message in TuningMessages.For(Tuning.FromA4Hertz(a4)))
        {
            fluid.Handle(message);
        }

        fluid.Handle(MidiMessage.NoteOn(0, 69, 80));
        double hertz = Spectrum.Peak(Rendered(fluid, Window), Rate, a4);
        Assert.True(Math.Abs(Spectrum.Cents(hertz, a4)) < 6, $"{hertz:0.0} Hz");
        Assert.Empty(TuningMessages.For(Tuning.Iso16));
    }

    [Fact]
    public void However_much_is_played_no_sample_leaves_full_scale()
    {
        SoundFeed stream = new(new StringTone(Tuning.Iso16, Rate), Rate);
        float loudest = 0;
        for (int round = 0; round < 40; round++)
        {
            for (int key = 30; key < 94; key++)
            {
                stream.TrySend(MidiMessage.NoteOn(0, key, 127));
            }

            loudest = Math.Max(loudest, Taken(stream, Rate / 4).Max(Math.Abs));
        }

        Assert.InRange(loudest, 0.7f, 1);
    }

    [Theory]
    [InlineData("let go")]
    [InlineData("struck again")]
    [InlineData("all notes off")]
    [InlineData("all sound off")]
    public void Where_notes_end_the_wave_makes_no_step(string how)
    {
        SoundFeed stream = new(new StringTone(Tuning.Iso16, Rate), Rate);
        foreach (int key in (int[])[36, 48, 55, 60, 64, 72])
        {
            stream.TrySend(MidiMessage.NoteOn(0, key, 100));
        }

        float[] before = Taken(stream, Rate);
        End(stream, how);
        float[] after = Taken(stream, Rate / 4);

        float usual = Steps([.. before.TakeLast(Rate / 10)]);
        Assert.InRange(Steps([before[^1], .. after]), 0, usual + AllowedStep);
    }

    [Fact]
    public void All_sound_off_is_silence_within_a_few_milliseconds_and_notes_may_follow()
    {
        SoundFeed stream = new(new StringTone(Tuning.Iso16, Rate), Rate);
        stream.TrySend(MidiMessage.NoteOn(0, 48, 127));
        Taken(stream, Rate);
        stream.TrySend(MidiMessage.Control(0, MidiConstants.AllSoundOff, 0));
        stream.TrySend(MidiMessage.NoteOn(0, 72, 127));

        float[] after = Taken(stream, Rate / 10);
        Assert.All(after[(int)(SoundFeed.FadeSeconds * Rate)..(2 * SoundPort.BlockSamples)], sample => Assert.Equal(0, sample));
        Assert.Contains(after[(Rate / 20)..], sample => Math.Abs(sample) > 0.001);
    }

    [Fact]
    public void The_first_notes_are_a_quarter_as_loud_as_later_ones()
    {
        SoundFeed stream = new(new StringTone(Tuning.Iso16, Rate), Rate);
        float first = Struck(stream);
        for (int i = 0; i < 20; i++)
        {
            Struck(stream);
        }

        Assert.InRange(first / Struck(stream), 0.2f, 0.35f);
    }

    [Fact]
    public void The_pedal_holds_what_is_let_go()
    {
        StringTone tone = new(Tuning.Iso16, Rate);
        tone.Handle(MidiMessage.NoteOn(0, 60, 80));
        tone.Handle(MidiMessage.Control(0, MidiConstants.DamperPedal, 127));
        tone.Handle(MidiMessage.NoteOff(0, 60));
        Rendered(tone, Rate / 4);
        Assert.Equal(1, tone.Sounding);
        tone.Handle(MidiMessage.Control(0, MidiConstants.DamperPedal, 0));
        Rendered(tone, Rate / 4);
        Assert.Equal(0, tone.Sounding);
    }

    [Fact]
    public void Making_sound_allocates_nothing()
    {
        SoundFeed stream = new(new StringTone(Tuning.Iso16, Rate), Rate);
        float[] block = new float[SoundPort.BlockSamples];
        stream.TrySend(MidiMessage.NoteOn(0, 60, 80));
        stream.Render(block);
        Assert.Equal(0, Allocated.Least(() => () =>
        {
            for (int i = 0; i < 100; i++)
            {
                stream.TrySend(MidiMessage.NoteOn(0, 40 + (i % 30), 80));
                stream.Render(block);
            }
        }));
    }

    private static FluidSynthSource Fluid(Tuning tuning)
    {
        string font = "/usr/share/sounds/sf2/TimGM6mb.sf2";
        Assert.SkipUnless(FluidSynthSource.IsInstalled && File.Exists(font), "FluidSynth or its small SoundFont is not installed.");
        return FluidSynthSource.TryCreate(font, tuning, Rate)!;
    }

    private static void End(SoundFeed stream, string how)
    {
        int[] keys = [36, 48, 55, 60, 64, 72];
        foreach (MidiMessage message in how switch
        {
            "let go" => keys.Select(key => MidiMessage.NoteOff(0, key)),
            "struck again" => keys.Select(key => MidiMessage.NoteOn(0, key, 20)),
            "all notes off" => [MidiMessage.Control(0, MidiConstants.AllNotesOff, 0)],
            _ => [MidiMessage.Control(0, MidiConstants.AllSoundOff, 0)],
        })
        {
            stream.TrySend(message);
        }
    }

    private static float Struck(SoundFeed stream)
    {
        stream.TrySend(MidiMessage.NoteOn(0, 60, 80));
        float loudest = Taken(stream, Rate / 2).Max(Math.Abs);
        stream.TrySend(MidiMessage.NoteOff(0, 60));
        Taken(stream, Rate / 8);
        return loudest;
    }

    private static float Steps(float[] samples) => samples.Zip(samples.Skip(1), (a, b) => Math.Abs(b - a)).Max();

    private static float[] Rendered(IToneSource source, int count)
    {
        float[] samples = new float[count];
        source.Render(samples);
        return samples;
    }

    /// <summary>Block by block, as the loudspeaker takes them.</summary>
    private static float[] Taken(SoundFeed stream, int count)
    {
        float[] samples = new float[count];
        for (int at = 0; at < count; at += SoundPort.BlockSamples)
        {
            stream.Render(samples.AsSpan(at, Math.Min(SoundPort.BlockSamples, count - at)));
        }

        return samples;
    }
}
