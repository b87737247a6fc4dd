using System.Globalization;
using System.Text;
using System.Xml;

namespace WarmupConsole.Storage.MusicXml.Writing;

/// <summary>Elements and attributes, a line each; characters that XML does not allow are replaced.</summary>
internal sealed class XmlOutput : IDisposable
{
    private readonly MemoryStream bytes = new();
    private readonly XmlWriter writer;

    internal XmlOutput()
    {
        writer = XmlWriter.Create(bytes, new() { Encoding = new UTF8Encoding(false), Indent = true, NewLineChars = "\n" });
        writer.WriteStartDocument();
    }

    /// <summary>An element around what is written inside.</summary>
    internal void Around(string name, Action inside, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Start(name, attributes);
        inside();
        writer.WriteEndElement();
    }

    /// <summary>An element with a text, or an empty one.</summary>
    internal void Put(string name, string text, params ReadOnlySpan<(string Name, string Value)> attributes)
    {
        Start(name, attributes);
        if (text.Length > 0)
        {
            writer.WriteString(Clean(text));
        }

        writer.WriteEndElement();
    }

    internal void Put(string name, long number) => Put(name, number.ToString(CultureInfo.InvariantCulture));

    /// <summary>The finished document.</summary>
    internal byte[] Finish()
    {
        writer.WriteEndDocument();
        writer.Flush();
        bytes.WriteByte((byte)'\n');
        return bytes.ToArray();
    }

    public void Dispose()
    {
        writer.Dispose();
        bytes.Dispose();
    }

    private void Start(string name, ReadOnlySpan<(string Name, string Value)> attributes)
    {
        writer.WriteStartElement(name);
        foreach ((string attribute, string value) in attributes)
        {
            writer.WriteAttributeString(attribute, Clean(value));
        }
    }

    private static string Clean(string text)
    {
        string line = Yaml.Printable.Line(text);
        return string.Concat(line.EnumerateRunes().Select(rune => rune.Value is 0xFFFE or 0xFFFF ? Rune.ReplacementChar : rune));
    }
}
