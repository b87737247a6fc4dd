using System.Text.Json;
using WarmupConsole.Midi.Ports;
using WarmupConsole.Midi.Sound;

namespace WarmupConsole.App.Reports;

/// <summary>What can sound, as <c>warmup ports --json</c> prints it.</summary>
/// <param name="Ports">The names of all ports.</param>
/// <param name="Used">The one that would be played on; null when nothing would sound, or when it is no port of the list.</param>
/// <param name="Sentence">Why.</param>
internal sealed record PortsReport(IReadOnlyList<string> Ports, string? Used, string Sentence)
{
    internal static PortsReport From(PortListing listing, PortChoice choice, string why, SoundOutlook builtIn) =>
        new(listing.Names, PortOutlook.Used(listing, choice), PortOutlook.Verdict(listing, choice, why, builtIn));

    internal string ToJson() => JsonSerializer.Serialize(this, ReportJson.Default.PortsReport);
}
