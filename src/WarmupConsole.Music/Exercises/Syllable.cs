namespace WarmupConsole.Music.Exercises;

/// <summary>A sung syllable: its text as shown, and its vowel in IPA ("m" for a hum, "ʙ" for a lip trill, empty when unknown).</summary>
public sealed record Syllable(string Text, string Vowel);
