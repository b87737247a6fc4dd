using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Music.Voices;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Marks;

namespace WarmupConsole.Sessions.Review;

/// <summary>Which pitches of a part a mark may mean: the more it says, the fewer.</summary>
internal static class MarkedPitches
{
    private const int Octave = 12;

    internal static IReadOnlyList<Pitch> Of(MarkMade mark, string part, SungRung? rung, Choir choir)
    {
        IReadOnlyList<Pitch> sung = rung is not null && rung.Pitches.TryGetValue(part, out IReadOnlyList<Pitch>? pitches) ? pitches : [];
        if (mark.Pitch is { } midi)
        {
            return [InOctaveOf(midi, sung) ?? KeySpelling.TonicFor(WithinReach(midi, sung, choir.Parts.FirstOrDefault(known => known.Id == part)), Mode.Major)];
        }

        Pitch[] placed = [.. sung.Where((pitch, index) => mark.Place.Split(", ").Any(place => IsMeant(place, pitch, index, sung, rung!)))];
        return placed.Length > 0 ? placed : sung;
    }

    /// <summary>The note that the part really sang, even when it was typed an octave off; null when it sang no such note.</summary>
    private static Pitch? InOctaveOf(int midi, IReadOnlyList<Pitch> sung) => sung
        .Where(pitch => (pitch.Midi - midi) % Octave == 0).OrderBy(pitch => Math.Abs(pitch.Midi - midi)).Select(pitch => (Pitch?)pitch).FirstOrDefault();

    /// <summary>A note that the part does not have, in the octave nearest to what it sang.</summary>
    private static int WithinReach(int midi, IReadOnlyList<Pitch> sung, Part? part) => part is null || sung.Count == 0 || part.Range.Extreme.Contains(midi)
        ? midi
        : Enumerable.Range(0, 10).Select(octave => (midi % Octave) + (Octave * octave))
            .MinBy(near => Math.Max(sung[0].Midi - near, near - sung[^1].Midi));

    private static bool IsMeant(string place, Pitch pitch, int index, IReadOnlyList<Pitch> sung, SungRung rung) => place switch
    {
        "top" => index == sung.Count - 1,
        "bottom" => index == 0,
        _ when place.StartsWith("degree ", StringComparison.Ordinal) => IsDegree(place["degree ".Length..], pitch, rung.Tonic),
        _ => IsNamed(place, pitch),
    };

    /// <summary>"on D♯" means what sounds so, however the key spells it.</summary>
    private static bool IsNamed(string place, Pitch pitch) => place.StartsWith(PlaceData.On, StringComparison.Ordinal)
        && Pitch.TryParse(place[PlaceData.On.Length..] + "4", out Pitch named) && (pitch.Midi - named.Midi) % Octave == 0;

    /// <summary>By letter name, so that the third is meant in major and minor alike; 1 and 8 are one letter and are not told apart.</summary>
    private static bool IsDegree(string degree, Pitch pitch, Pitch tonic) =>
        int.TryParse(degree.TrimStart('b', '#'), out int number) && (pitch.DiatonicNumber - tonic.DiatonicNumber - (number - 1)) % 7 == 0;
}
