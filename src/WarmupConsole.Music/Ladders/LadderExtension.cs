using WarmupConsole.Music.Voices;

namespace WarmupConsole.Music.Ladders;

/// <summary>A ladder with one key more, and what must be said before it is led.</summary>
/// <param name="Rungs">The whole ladder; up to the present rung it is the old one.</param>
/// <param name="Added">The new rung.</param>
/// <param name="BeyondExtreme">Parts that sing in the key before it and cannot sing this one at all; empty when nobody need be warned.</param>
/// <param name="Warning">A sentence for each of them, or empty.</param>
public sealed record LadderExtension(IReadOnlyList<Rung> Rungs, Rung Added, IReadOnlyList<Part> BeyondExtreme, string Warning);
