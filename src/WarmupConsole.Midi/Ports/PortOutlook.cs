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
        int used = PortNames.Find(listing.Names, choice);
        List<string> lines = [.. listing.Names.Select((name, i) => Line(name, i == used))];
        if (lines.Count > 0)
        {
            lines.Add("");
        }

        bool isBuiltIn = used < 0 && (choice.Kind == PortChoiceKind.First || BuiltInSound.IsWished(choice));
        lines.AddRange(isBuiltIn ? BuiltIn(listing, choice, why, builtIn) : [Verdict(listing, choice, used, why)]);
        if (used >= 0 && listing.Names.Count(name => name == listing.Names[used]) > 1)
        {
            lines.Add(PortTexts.SameName(listing.Names[used]));
        }

        return lines;
    }

    private static string Line(string name, bool isUsed) =>
        $"{(isUsed ? '>' : ' ')} {name}{(PortNames.IsLoopback(name) ? PortTexts.LoopbackRemark : "")}";

    private static IEnumerable<string> BuiltIn(PortListing listing, PortChoice choice, string why, SoundOutlook builtIn) => (BuiltInSound.IsWished(choice), builtIn.Plays) switch
    {
        (true, true) => [PortTexts.WouldUse(choice.Name, why), builtIn.Sentence],
        (true, false) => [PortTexts.NoLoudspeaker],
        (false, true) => [builtIn.Sentence],
        _ => [listing.Trouble ?? PortTexts.NoneFound, builtIn.Sentence],
    };

    private static string Verdict(PortListing listing, PortChoice choice, int used, string why) => choice.Kind switch
    {
        PortChoiceKind.None => PortTexts.NothingWanted,
        _ when RawDevices.IsPath(choice) => PortTexts.WouldUse(choice.Name, why),
        PortChoiceKind.Named when used < 0 => PortTexts.NotFound(choice.Name, listing.Names),
        PortChoiceKind.First => PortTexts.WouldUse(listing.Names[used], PortTexts.FirstFound),
        _ => PortTexts.WouldUse(listing.Names[used], why),
    };
}
