using System.Text.Json;
using WarmupConsole.Midi.Listening;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Sound;

namespace WarmupConsole.App.Reports;

/// <summary>What can sound and be heard, as <c>warmup ports --json</c> prints it.</summary>
/// <param name="Ports">The names of all ports.</param>
/// <param name="Used">The one that would be played on; null when nothing would sound, or when it is no port of the list.</param>
/// <param name="Sentence">Why.</param>
/// <param name="Inputs">The names of all inputs.</param>
/// <param name="Heard">The one that pedals, played keys and follow mode would be heard on; null when nothing would be heard, or when it is no input of the list.</param>
/// <param name="HeardSentence">Why.</param>
internal sealed record PortsReport(IReadOnlyList<string> Ports, string? Used, string Sentence, IReadOnlyList<string> Inputs, string? Heard, string HeardSentence)
{
    internal static PortsReport From((PortListing Listing, PortChoice Choice, string Why) port, SoundOutlook builtIn, InputOutlook input) => new(
        port.Listing.Names,
        PortOutlook.Used(port.Listing, port.Choice),
        PortOutlook.Verdict(port.Listing, port.Choice, port.Why, builtIn),
        input.Listing.Names,
        input.Used,
        input.Verdict);

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.PortsReport);
}
