using WarmupConsole.Midi.Sound;

namespace WarmupConsole.Midi.Ports;

/// <summary>What a choice of port would come to with the ports there are, in lines for the director.</summary>
public static class PortOutlook
{
    /// <param name="listing">The ports there are.</param>
    /// <param name="choice">What is wanted.</param>
    /// <param name="why">Whose wish it is, such as "chosen with --port"; not used when nobody wished for anything.</param>
    /// <param name="builtIn">What sounds without any device, or why nothing does.</param>
    public static IReadOnlyList<string> Lines(PortListing listing, PortChoice choice, string why, SoundOutlook builtIn)
    {
        int used = Find(listing, choice);
        List<string> lines = [.. listing.Names.Select((name, i) => Line(name, i == used))];
        if (lines.Count > 0)
        {
            lines.Add("");
        }

        lines.Add(Verdict(listing, choice, why, builtIn));
        if (used >= 0 && listing.Names.Count(name => name == listing.Names[used]) > 1)
        {
            lines.Add(PortTexts.SameName(listing.Names[used]));
        }

        return lines;
    }

    /// <summary>The port of the list that would be played on, or null.</summary>
    public static string? Used(PortListing listing, PortChoice choice) => Find(listing, choice) is >= 0 and int used ? listing.Names[used] : null;

    /// <summary>What would sound, and why, in one sentence.</summary>
    public static string Verdict(PortListing listing, PortChoice choice, string why, SoundOutlook builtIn) => (choice.Kind, Used(listing, choice)) switch
    {
        (PortChoiceKind.None, _) => PortTexts.NothingWanted,
        _ when RawDevices.IsPath(choice) => PortTexts.WouldUse(choice.Name, why),
        (PortChoiceKind.Named, _) when BuiltInSound.IsWished(choice) => builtIn.Plays ? $"{PortTexts.WouldUse(choice.Name, why)} {builtIn.Sentence}" : PortTexts.NoLoudspeaker,
        (PortChoiceKind.Named, null) => PortTexts.NotFound(choice.Name, listing.Names),
        (_, null) => builtIn.Plays ? builtIn.Sentence : $"{listing.Trouble ?? PortTexts.NoneFound} {builtIn.Sentence}",
        (PortChoiceKind.First, { } used) => PortTexts.WouldUse(used, PortTexts.FirstFound),
        (_, { } used) => PortTexts.WouldUse(used, why),
    };

    private static int Find(PortListing listing, PortChoice choice) => PortNames.Find(listing.Names, choice);

    private static string Line(string name, bool isUsed) =>
        $"{(isUsed ? '>' : ' ')} {name}{(PortNames.IsLoopback(name) ? PortTexts.LoopbackRemark : "")}";
}
