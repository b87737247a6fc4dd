using WarmupConsole.Midi.Ports;

namespace WarmupConsole.Midi.Listening;

/// <summary>What a choice of input would come to with the inputs there are: what pedals, played keys and follow mode would be heard on.</summary>
/// <param name="Listing">The inputs there are.</param>
/// <param name="Choice">What is wanted.</param>
/// <param name="Why">Why that one, such as "it has the name of the port"; not used when nobody wished for anything.</param>
public sealed record InputOutlook(PortListing Listing, PortChoice Choice, string Why)
{
    /// <summary>The input of the list that would be listened to, or null.</summary>
    public string? Used => Find is >= 0 and int found && !PortNames.AreAlike(Listing.Names, Listing.Names[found]) ? Listing.Names[found] : null;

    /// <summary>What would be heard, and why, in one sentence.</summary>
    public string Verdict => (Choice.Kind, Find) switch
    {
        (PortChoiceKind.None, _) => ListeningTexts.NotWanted,
        _ when RawDevices.IsPath(Choice) => ListeningTexts.WouldHear(Choice.Name, Why),
        (PortChoiceKind.Named, < 0) => ListeningTexts.NotFound(Choice.Name, Listing.Names),
        (_, < 0) => Listing.Trouble ?? ListeningTexts.NoneFound,
        (_, var found) when Used is null => ListeningTexts.SameName(Listing.Names[found]),
        (PortChoiceKind.First, var found) => ListeningTexts.WouldHear(Listing.Names[found], ListeningTexts.FirstFound),
        (_, var found) => ListeningTexts.WouldHear(Listing.Names[found], Why),
    };

    /// <summary>All inputs, the one that would be listened to marked, and the verdict; for the director.</summary>
    public IReadOnlyList<string> Lines => Listing.Names.Count == 0
        ? [Verdict]
        : [ListeningTexts.Inputs, .. Listing.Names.Select(Line), "", Verdict];

    private int Find => PortNames.Find(Listing.Names, Choice);

    private string Line(string name) => $"{(name == Used ? '>' : ' ')} {name}{(PortNames.IsLoopback(name) ? PortTexts.LoopbackRemark : "")}";
}
