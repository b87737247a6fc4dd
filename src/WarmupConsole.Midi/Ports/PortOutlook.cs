namespace WarmupConsole.Midi.Ports;

/// <summary>What a choice of port would come to with the ports there are, in lines for the director.</summary>
public static class PortOutlook
{
    /// <param name="listing">The ports there are.</param>
    /// <param name="choice">What is wanted.</param>
    /// <param name="why">Whose wish it is, such as "chosen with --port"; not used when nobody wished for anything.</param>
    public static IReadOnlyList<string> Lines(PortListing listing, PortChoice choice, string why)
    {
        int used = PortNames.Find(listing.Names, choice);
        List<string> lines = [.. listing.Names.Select((name, i) => Line(name, i == used))];
        if (lines.Count > 0)
        {
            lines.Add("");
        }

        lines.Add(Verdict(listing, choice, used, why));
        if (used >= 0 && listing.Names.Count(name => name == listing.Names[used]) > 1)
        {
            lines.Add(PortTexts.SameName(listing.Names[used]));
        }

        return lines;
    }

    private static string Line(string name, bool isUsed) =>
        $"{(isUsed ? '>' : ' ')} {name}{(PortNames.IsLoopback(name) ? PortTexts.LoopbackRemark : "")}";

    private static string Verdict(PortListing listing, PortChoice choice, int used, string why) => choice.Kind switch
    {
        PortChoiceKind.None => PortTexts.NothingWanted,
        _ when RawDevices.IsPath(choice) => PortTexts.WouldUse(choice.Name, why),
        PortChoiceKind.Named when used < 0 => PortTexts.NotFound(choice.Name, listing.Names),
        _ when used < 0 => listing.Trouble ?? PortTexts.NoneFound,
        PortChoiceKind.First => PortTexts.WouldUse(listing.Names[used], PortTexts.FirstFound),
        _ => PortTexts.WouldUse(listing.Names[used], why),
    };
}
