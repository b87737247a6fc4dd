using System.Globalization;
using System.Text;
using WarmupConsole.Tui.Planning;

namespace WarmupConsole.Tui.Keys;

/// <summary>docs/keys.md, written from the key table.</summary>
public static class KeysPage
{
    public static string Markdown()
    {
        StringBuilder page = new("# Keys\n\nThis page is written by the program from its key table.\n\n");
        page.Append("Letters and digits write, other keys drive: the first one typed while the warm-up runs opens the mark line and stands in it.\n");
        page.Append("While the line is open every printing key writes; Tab, the arrows and the Ctrl keys still drive.\n");
        page.Append("An action that needs a name (a key, parts, an exercise) asks for it in the same place: Enter answers, and the music goes on meanwhile.\n\n");
        Section(page, "At all times", LineUse.Always);
        Section(page, "While the mark line is closed", LineUse.WhenClosed);
        Section(page, "While the mark line is open", LineUse.WhenOpen);
        page.Append("The key that closed the line does nothing else for half a second, so that a bounce or a key held down adds no key and takes no mark back.\n\n");
        page.Append("Other signs do nothing and say so: a mark begins with a letter or a digit. Other keys do nothing. Function keys, Page keys and Esc are not needed, and no key without Ctrl ends the program.\n");
        Planning(page);
        Intentions(page);
        return page.ToString();
    }

    private static void Planning(StringBuilder page)
    {
        page.Append("\n## On the planning screen\n\n").Append(PlanTexts.HelpHint).Append("\n\n| key | does | in words | where |\n|---|---|---|---|\n");
        foreach (PlanKeyRow row in PlanKeys.Rows)
        {
            string where = row.Modes.Count == Enum.GetValues<PlanMode>().Length ? "everywhere" : string.Join(", ", row.Modes.Select(mode => PlanTexts.Modes[mode]));
            page.Append($"| {string.Join(" or ", row.Strokes.Count > 1 ? row.Strokes.Select(stroke => $"`{stroke}`") : [$"`{row.Label}`"])} | {row.Brief} | {row.Words} | {where} |\n");
        }
    }

    private static void Intentions(StringBuilder page)
    {
        page.Append("\n## What the commonest intentions cost\n\nThe goal is one key; two for a mark. What has to be named costs its letters.\n\n");
        page.Append("| intention | keys | presses |\n|---|---|---|\n");
        foreach (Intention intention in IntentionData.Rows)
        {
            page.Append(CultureInfo.InvariantCulture, $"| {intention.Words} | {string.Join(' ', intention.Presses.Select(press => $"`{press}`"))} | {intention.Presses.Count} |\n");
        }
    }

    private static void Section(StringBuilder page, string title, LineUse use)
    {
        page.Append("## ").Append(title).Append("\n\n| key | does | in words |\n|---|---|---|\n");
        foreach (KeyRow row in KeyTable.Rows.Where(row => row.Use == use))
        {
            page.Append($"| {Strokes(row)} | {row.Brief} | {row.Words} |\n");
        }

        page.Append('\n');
    }

    /// <summary>The label; where several signs serve, all of them.</summary>
    private static string Strokes(KeyRow row) =>
        row.Strokes.Count > 1 ? string.Join(" or ", row.Strokes.Select(stroke => $"`{stroke}`")) : $"`{row.Label}`";
}
