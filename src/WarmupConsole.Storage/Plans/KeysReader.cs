using WarmupConsole.Music.Ladders;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Plans;

/// <summary>Reads 'keys', of a step in a plan or of an exercise that has its own.</summary>
internal static class KeysReader
{
    /// <param name="fields">What holds 'keys'.</param>
    /// <param name="choir">Whose parts a limit may name; null where it is not known.</param>
    /// <returns>Null when it holds none.</returns>
    internal static LadderSpec? Read(MapReader fields, Choir? choir)
    {
        if (fields.Map("keys") is not { } keys)
        {
            return null;
        }

        LadderSpec spec = new()
        {
            Start = PitchField.Read(keys, "start"),
            Shape = keys.Choice<LadderShape>("shape") ?? LadderShape.UpAndBack,
            Limit = Limit(keys, choir),
            ReachPercent = keys.Whole("reach") ?? 0,
            ToleranceSemitones = keys.Whole("tolerance") ?? 2,
            StepSemitones = keys.Whole("by") ?? 1,
            TakesOctave = keys.YesNo("octave") ?? false,
            MostKeys = keys.Whole("most"),
        };
        keys.Finish();
        return spec;
    }

    private static string Limit(MapReader keys, Choir? choir)
    {
        if (keys.Find("limit") is not { } node || keys.Values.Id(node, "limit") is not { } id)
        {
            return LadderSpec.Everyone;
        }

        if (choir is not null && Limits(choir) is var names && !names.Contains(id))
        {
            keys.Problems.Add(node, StorageTexts.UnknownLimit(id, names));
        }

        return id;
    }

    private static List<string> Limits(Choir choir) =>
    [
        LadderSpec.Everyone,
        LadderSpec.AnyPart,
        .. choir.Parts.Select(part => part.Id),
        .. choir.Parts.SelectMany(part => part.Groups).Distinct(),
    ];
}
