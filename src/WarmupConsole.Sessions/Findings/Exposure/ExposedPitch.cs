namespace WarmupConsole.Sessions.Findings.Exposure;

/// <summary>A pitch that a line asks a part for, and how; where it comes more than once, its longest note speaks for it.</summary>
/// <param name="Midi">MIDI number of the sounding pitch.</param>
/// <param name="Beats">Beats of its longest note; 0 when the exercise is unknown.</param>
/// <param name="Vowel">IPA of what is sung on that note; empty when unknown.</param>
/// <param name="Loudness">0 for the softest word of <see cref="Music.Exercises.DynamicsData"/>, −1 when unknown.</param>
public readonly record struct ExposedPitch(int Midi, double Beats, string Vowel, int Loudness);
