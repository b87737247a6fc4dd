using System.Collections.Frozen;
using System.Globalization;
using System.Xml;

namespace WarmupConsole.Storage.MusicXml;

/// <summary>Walks forward through the elements of a score. Document types are skipped, nothing outside the file is ever asked for.</summary>
internal sealed class XmlCursor(XmlReader xml)
{
    private readonly IXmlLineInfo line = (IXmlLineInfo)xml;

    internal string Name => xml.LocalName;

    internal (int Line, int Column) Place => (line.LineNumber, line.LinePosition);

    internal static XmlReaderSettings Settings() => new()
    {
        DtdProcessing = DtdProcessing.Ignore,
        XmlResolver = null,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
        IgnoreWhitespace = true,
        CloseInput = true,
    };

    /// <summary>Goes to the first element; false when there is none.</summary>
    internal bool ToRoot() => xml.MoveToContent() == XmlNodeType.Element;

    internal string? Attribute(string name) => xml.GetAttribute(name);

    internal bool IsYes(string attribute) => xml.GetAttribute(attribute) == "yes";

    /// <summary>The language of the element's text, or empty.</summary>
    internal string Language => xml.GetAttribute("xml:lang") ?? "";

    /// <summary>Calls what the table has for the name of each child; others are passed over.</summary>
    internal void Children<T>(FrozenDictionary<string, Action<T>> table, T reader)
    {
        int depth = xml.Depth;
        if (xml.IsEmptyElement)
        {
            return;
        }

        while (ToChild(depth))
        {
            if (table.TryGetValue(xml.LocalName, out Action<T>? read))
            {
                read(reader);
            }
        }
    }

    /// <summary>The names of all children, in order.</summary>
    internal void ChildNames(Action<string> take)
    {
        int depth = xml.Depth;
        if (xml.IsEmptyElement)
        {
            return;
        }

        while (ToChild(depth))
        {
            take(xml.LocalName);
        }
    }

    /// <summary>The text of the element, without what is nested in it; cut where it is unreasonably long.</summary>
    internal string Text()
    {
        if (xml.IsEmptyElement)
        {
            return "";
        }

        int depth = xml.Depth;
        string text = "";
        while (xml.Read() && !(xml.NodeType == XmlNodeType.EndElement && xml.Depth == depth))
        {
            if (xml.NodeType is XmlNodeType.Text or XmlNodeType.CDATA or XmlNodeType.SignificantWhitespace && text.Length < MusicXmlLimits.LongestText)
            {
                text = text.Length == 0 ? xml.Value : text + xml.Value;
            }
        }

        return text.Length <= MusicXmlLimits.LongestText ? text : text[..MusicXmlLimits.LongestText];
    }

    /// <summary>A finite number, or null.</summary>
    internal static double? Number(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number) && double.IsFinite(number) ? number : null;

    /// <summary>A whole number, or null.</summary>
    internal static int? Whole(string text) => int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out int number) ? number : null;

    private bool ToChild(int depth)
    {
        while (xml.Read())
        {
            if (xml.NodeType == XmlNodeType.Element && xml.Depth == depth + 1)
            {
                return true;
            }

            if (xml.NodeType == XmlNodeType.EndElement && xml.Depth == depth)
            {
                return false;
            }
        }

        return false;
    }
}
