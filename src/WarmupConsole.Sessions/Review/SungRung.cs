using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Sessions.Review;

/// <summary>One rung as it was sung in a logged run. A repetition is a rung of its own.</summary>
/// <param name="Step">Index of its step, from 0.</param>
/// <param name="Rung">Index in its ladder, from 0.</param>
/// <param name="Tonic">The tonic as written for parts with placement 0.</param>
/// <param name="Whole">True when it was sung to its last beat.</param>
/// <param name="Pitches">For each part that sang, the different sounding pitches it was asked for, lowest first, spelled in the key.</param>
public sealed record SungRung(int Step, int Rung, Pitch Tonic, bool Whole, IReadOnlyDictionary<string, IReadOnlyList<Pitch>> Pitches);
