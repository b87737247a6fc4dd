using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Needs;

/// <summary>Reads needs.yaml, as docs/plan-format.md says.</summary>
public static class NeedsFile
{
    /// <summary>Its name in a choir folder.</summary>
    public const string Name = "needs.yaml";

    /// <param name="file">The file as the director named it, for problems.</param>
    /// <param name="bytes">What it holds.</param>
    /// <param name="choir">Whose parts and groups it speaks of.</param>
    public static FileRead<IReadOnlyList<ChoirNeed>> Read(string file, ReadOnlySpan<byte> bytes, Choir choir)
    {
        FileRead<MapReader> opened = FormatCheck.Open(file, bytes, NeedFields.Needs);
        if (!opened.IsGood)
        {
            return new(null, opened.Problems);
        }

        MapReader reader = opened.Value;
        List<ChoirNeed> needs = [.. reader.Maps("needs").Select(fields => NeedReader.Read(fields, choir))];
        reader.Finish();
        return reader.Problems.Finish<IReadOnlyList<ChoirNeed>>(needs);
    }
}
