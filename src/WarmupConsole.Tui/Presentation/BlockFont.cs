using System.Collections.Frozen;

namespace WarmupConsole.Tui.Presentation;

/// <summary>Letters for reading from a metre away: five rows each, a # for each lit square.</summary>
public static class BlockFont
{
    public const int Rows = 5;

    private static readonly (char Letter, string Shape)[] Shapes =
    [
        ('A', " ### /#   #/#####/#   #/#   #"),
        ('B', "#### /#   #/#### /#   #/#### "),
        ('C', " ####/#    /#    /#    / ####"),
        ('D', "#### /#   #/#   #/#   #/#### "),
        ('E', "#####/#    /#### /#    /#####"),
        ('F', "#####/#    /#### /#    /#    "),
        ('G', " ####/#    /#  ##/#   #/ ####"),
        ('H', "#   #/#   #/#####/#   #/#   #"),
        ('I', "###/ # / # / # /###"),
        ('J', "  ##/   #/   #/#  #/ ## "),
        ('K', "#  #/# # /##  /# # /#  #"),
        ('L', "#   /#   /#   /#   /####"),
        ('M', "#   #/## ##/# # #/#   #/#   #"),
        ('N', "#   #/##  #/# # #/#  ##/#   #"),
        ('O', " ### /#   #/#   #/#   #/ ### "),
        ('P', "#### /#   #/#### /#    /#    "),
        ('Q', " ### /#   #/# # #/#  # / ## #"),
        ('R', "#### /#   #/#### /#  # /#   #"),
        ('S', " ####/#    / ### /    #/#### "),
        ('T', "#####/  #  /  #  /  #  /  #  "),
        ('U', "#   #/#   #/#   #/#   #/ ### "),
        ('V', "#   #/#   #/#   #/ # # /  #  "),
        ('W', "#   #/#   #/# # #/## ##/#   #"),
        ('X', "#   #/ # # /  #  / # # /#   #"),
        ('Y', "#   #/ # # /  #  /  #  /  #  "),
        ('Z', "#####/   # /  #  / #   /#####"),
        ('0', " ## /#  #/#  #/#  #/ ## "),
        ('1', " # /## / # / # /###"),
        ('2', "### /   #/ ## /#   /####"),
        ('3', "### /   #/ ## /   #/### "),
        ('4', "#  #/#  #/####/   #/   #"),
        ('5', "####/#   /### /   #/### "),
        ('6', " ## /#   /### /#  #/ ## "),
        ('7', "####/   #/  # / #  / #  "),
        ('8', " ## /#  #/ ## /#  #/ ## "),
        ('9', " ## /#  #/ ###/   #/ ## "),
        ('♭', "#  /#  /## /# #/## "),
        ('♯', " # # /#####/ # # /#####/ # # "),
        ('–', "   /   /###/   /   "),
        ('-', "  /  /##/  /  "),
        ('·', " / /#/ / "),
        (' ', "  /  /  /  /  "),
    ];

    private static readonly FrozenDictionary<char, string[]> Glyphs = Shapes.ToFrozenDictionary(s => s.Letter, s => s.Shape.Split('/'));

    public static IEnumerable<char> Letters => Glyphs.Keys;

    /// <summary>The five rows of a letter, or null when there is none.</summary>
    public static string[]? Find(char letter) => Glyphs.GetValueOrDefault(letter);
}
