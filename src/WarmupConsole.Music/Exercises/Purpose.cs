namespace WarmupConsole.Music.Exercises;

/// <summary>What an exercise trains, by voice function. Names in files are in <see cref="PurposeData"/>.</summary>
public enum Purpose
{
    ClosedToOpenVowels,
    EvenVowels,
    RepeatedPitch,
    ScaleMotion,
    LeapThird,
    LeapFifth,
    LeapOctave,
    HalfSteps,
    Sustained,
    ShortToLong,
    Slow,
    Quick,
    SoftToLoud,
    Swell,
    Legato,
    Staccato,
    Simple,
    Complex,
    Chords,
    Canon,
    Drone,
    Blend,
}
