using WarmupConsole.Sessions.Hands;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.Storage.Folders;

/// <summary>What settings.yaml says about pedals.</summary>
internal static class PedalsReader
{
    internal const string Allowed = "sustain, sostenuto, soft, key 0 to key 127, or controller 0 to controller 119; a pedal that works the other way round has ', reversed' behind it";

    internal static FieldTable Fields { get; } = new(
        "pedals",
        [.. PedalUseData.All.Select(use => Field.Text(PedalUseData.Id(use), $"What means '{PedalUseData.Words(use)}': {Allowed}."))]);

    internal static Pedals Read(MapReader fields)
    {
        Pedals pedals = Pedals.None;
        foreach (PedalUse use in PedalUseData.All)
        {
            string name = PedalUseData.Id(use);
            if (fields.Find(name) is { } node && fields.Values.Filled(node, name) is { } text)
            {
                pedals = Control.Parse(text.Value) is not { } control ? Refused(fields, text, StorageTexts.NotAPedal(name, Allowed), pedals)
                    : pedals.Find(control.IsKey, control.Number) is { } other ? Refused(fields, text, StorageTexts.PedalTwice(name, PedalUseData.Id(other.Use)), pedals)
                    : pedals.With(use, control);
            }
        }

        fields.Finish();
        return pedals;
    }

    private static Pedals Refused(MapReader fields, YamlNode node, string sentence, Pedals pedals)
    {
        fields.Problems.Add(node, sentence);
        return pedals;
    }
}
