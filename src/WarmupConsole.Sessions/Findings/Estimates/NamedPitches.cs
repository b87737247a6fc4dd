using System.Globalization;
using WarmupConsole.Sessions.Findings.Exposure;

namespace WarmupConsole.Sessions.Findings.Estimates;

/// <summary>Which pitches of a line a mark names, by the pitch itself or by a place; none when it names none that the line has.</summary>
internal static class NamedPitches
{
    private const string DegreePrefix = "degree ";

    /// <summary>Semitones above the tonic that a degree can be, in major and minor.</summary>
    private static readonly int[][] Degrees = [[0], [1, 2], [3, 4], [5, 6], [7], [8, 9], [10, 11], [0]];

    internal static IReadOnlyList<int> Of(HeardMark mark, ExposedLine line, int tonic)
    {
        if (mark.Pitch is { } pitch)
        {
            return line.Has(pitch) ? [pitch] : [];
        }

        return mark.Place.Length == 0 ? [] : InPlaces(mark.Place, line, tonic);
    }

    /// <summary>By itself, because most marks name no place: what its query needs is not made for them.</summary>
    private static int[] InPlaces(string places, ExposedLine line, int tonic) => [.. places.Split(", ").SelectMany(place => Placed(place, line, tonic)).Distinct()];

    private static IEnumerable<int> Placed(string place, ExposedLine line, int tonic) => place switch
    {
        "top" => [line.Pitches[^1].Midi],
        "bottom" => [line.Pitches[0].Midi],
        _ when place.StartsWith(DegreePrefix, StringComparison.Ordinal) => OnDegree(place[DegreePrefix.Length..], line, tonic),
        _ => [],
    };

    private static IEnumerable<int> OnDegree(string degree, ExposedLine line, int tonic) =>
        int.TryParse(degree.TrimStart('b', '#'), NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number is >= 1 and <= 8
            ? line.Pitches.Select(pitch => pitch.Midi).Where(midi => Degrees[number - 1].Contains((((midi - tonic) % 12) + 12) % 12))
            : [];
}
