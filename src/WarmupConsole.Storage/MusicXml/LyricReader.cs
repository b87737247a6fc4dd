using System.Collections.Frozen;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Reads the words of a note; of several verses the first.</summary>
internal sealed class LyricReader(XmlCursor xml)
{
    private static readonly FrozenDictionary<string, Action<LyricReader>> Elements = new (string Name, Action<LyricReader> Read)[]
    {
        ("syllabic", reader => reader.goesOn = reader.Xml.Text() is "begin" or "middle"),
        ("text", reader => reader.Text()),
        ("elision", reader => reader.text += " "),
    }.ToFrozenDictionary(row => row.Name, row => row.Read);

    private string text = "";
    private bool goesOn;

    /// <summary>The first language that any words name, or empty.</summary>
    internal string Language { get; private set; } = "";

    /// <summary>With a hyphen where the word goes on.</summary>
    internal string Syllable { get; private set; } = "";

    private XmlCursor Xml => xml;

    internal void Reset() => Syllable = "";

    internal void Read()
    {
        (text, goesOn) = ("", false);
        xml.Children(Elements, this);
        string words = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (Syllable.Length == 0 && words.Length > 0)
        {
            Syllable = goesOn ? words + "-" : words;
        }
    }

    private void Text()
    {
        Language = Language.Length == 0 ? xml.Language : Language;
        string more = xml.Text();
        text = text.Length < MusicXmlLimits.LongestText ? text + more : text;
    }
}
