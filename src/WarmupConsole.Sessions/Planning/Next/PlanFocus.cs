using WarmupConsole.Music.Exercises;
using WarmupConsole.Sessions.Choirs;
using WarmupConsole.Sessions.Findings;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What the director wants most of tonight: some purposes, some parts, or one finding.</summary>
/// <param name="Words">As typed.</param>
/// <param name="Purposes">One purpose or those of a family; may be empty.</param>
/// <param name="Parts">Ids of one part or those of a group; may be empty.</param>
/// <param name="Finding">Id of a finding, or empty.</param>
public sealed record PlanFocus(string Words, IReadOnlyList<Purpose> Purposes, IReadOnlyList<string> Parts, string Finding)
{
    /// <summary>Reads "tuning.scale", "tuning", "alto", "women" or "alto-flat-b4"; null when it is none of them.</summary>
    public static PlanFocus? Read(string text, Choir choir, IReadOnlyList<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(choir);
        ArgumentNullException.ThrowIfNull(findings);
        string word = text.Trim().ToLowerInvariant();
        PlanFocus focus = new(
            word,
            [.. Enum.GetValues<Purpose>().Where(purpose => PurposeData.Id(purpose) == word || PurposeData.Id(purpose).StartsWith(word + ".", StringComparison.Ordinal))],
            [.. choir.Parts.Where(part => part.Id == word || part.Groups.Contains(word)).Select(part => part.Id)],
            findings.Any(finding => finding.Id == word) ? word : "");
        return focus.Purposes.Count + focus.Parts.Count + focus.Finding.Length == 0 ? null : focus;
    }

    /// <summary>What may be written for it.</summary>
    public static IReadOnlyList<string> Names(Choir choir, IReadOnlyList<Finding> findings)
    {
        ArgumentNullException.ThrowIfNull(choir);
        ArgumentNullException.ThrowIfNull(findings);
        return
        [
            .. findings.Select(finding => finding.Id),
            .. choir.Parts.Select(part => part.Id),
            .. choir.Parts.SelectMany(part => part.Groups).Distinct(),
            .. PurposeData.Ids.Select(id => id.Split('.')[0]).Distinct(),
            .. PurposeData.Ids,
        ];
    }
}
