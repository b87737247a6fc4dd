using System.Text;
using Terminal.Gui.Input;

namespace WarmupConsole.Tui.Keys;

/// <summary>
/// Names for keys. A key that prints is named by what it prints, however the keyboard makes it (a plus sign needs
/// Shift on one layout and not on another); the others by their usual names.
/// </summary>
public static class KeyStroke
{
    public static string Name(Key key) => key == Key.Space ? "Space" : Printed(key) ?? key.ToString();

    /// <summary>What the key writes, or null when it is no writing key.</summary>
    public static string? Printed(Key key)
    {
        if (key.IsCtrl || key.IsAlt || key.IsModifierOnly)
        {
            return null;
        }

        return key.TryGetPrintableRune(out Rune rune) && !Rune.IsControl(rune) ? rune.ToString() : null;
    }

    /// <summary>True for what opens the mark line when it is closed: a mark begins with a word or a number ("12 bars too slow").</summary>
    public static bool OpensLine(string printed) => Rune.IsLetterOrDigit(printed.EnumerateRunes().First());
}
