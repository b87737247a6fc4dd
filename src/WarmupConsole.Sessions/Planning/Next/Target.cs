using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What a ladder comes to from below and from above: a pitch that sags is approached, not avoided.</summary>
/// <param name="Part">Id of the part.</param>
/// <param name="Pitch">The sounding pitch, or null: then the key is meant.</param>
/// <param name="Tonic">Tonic of the key it was heard in, or null.</param>
internal sealed record Target(string Part, Pitch? Pitch, Pitch? Tonic)
{
    /// <summary>IPA of the vowel that the pitch is to be sung on, or empty.</summary>
    internal string Vowel { get; init; } = "";

    /// <summary>How loud it is to be sung there, as in <see cref="Music.Exercises.DynamicsData"/>, or −1.</summary>
    internal int Loudness { get; init; } = -1;
}
