using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Scales;
using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Review;

/// <summary>Which pitches of a part a mark may mean: the more it says, the fewer.</summary>
internal static class MarkedPitches
{
    internal static IReadOnlyList<Pitch> Of(MarkMade mark, string part, SungRung? rung)
    {
        IReadOnlyList<Pitch> sung = rung is not null && rung.Pitches.TryGetValue(part, out IReadOnlyList<Pitch>? pitches) ? pitches : [];
        if (mark.Pitch is { } midi)
        {
            return [sung.Select(pitch => (Pitch?)pitch).FirstOrDefault(pitch => pitch!.Value.Midi == midi) ?? KeySpelling.TonicFor(midi, Mode.Major)];
        }

        Pitch[] placed = [.. sung.Where((pitch, index) => mark.Place.Split(", ").Any(place => IsMeant(place, pitch, index, sung, rung!)))];
        return placed.Length > 0 ? placed : sung;
    }

    private static bool IsMeant(string place, Pitch pitch, int index, IReadOnlyList<Pitch> sung, SungRung rung) => place switch
    {
        "top" => index == sung.Count - 1,
        "bottom" => index == 0,
        _ when place.StartsWith("degree ", StringComparison.Ordinal) => IsDegree(place["degree ".Length..], pitch, rung.Tonic),
        _ => place == "on " + pitch.Name,
    };

    /// <summary>By letter name, so that the third is meant in major and minor alike; 1 and 8 are one letter and are not told apart.</summary>
    private static bool IsDegree(string degree, Pitch pitch, Pitch tonic) =>
        int.TryParse(degree.TrimStart('b', '#'), out int number) && (pitch.DiatonicNumber - tonic.DiatonicNumber - (number - 1)) % 7 == 0;
}
