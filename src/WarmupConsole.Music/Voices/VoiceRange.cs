namespace WarmupConsole.Music.Voices;

/// <summary>What a part can sing at all, and within it what it sings with ease. Sounding pitches.</summary>
/// <param name="Extreme">Lowest and highest note the part can sing at all.</param>
/// <param name="Comfortable">Lowest and highest note the part sings with ease; inside <paramref name="Extreme"/>.</param>
public sealed record VoiceRange(PitchRange Extreme, PitchRange Comfortable);
