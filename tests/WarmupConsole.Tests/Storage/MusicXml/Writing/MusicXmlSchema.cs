using System.Xml;
using System.Xml.Linq;
using System.Xml.Schema;
using WarmupConsole.Tests.Architecture;

namespace WarmupConsole.Tests.Storage.MusicXml.Writing;

/// <summary>The W3C's schema of MusicXML 4.0, from the folder Schema beside; nothing is fetched.</summary>
internal static class MusicXmlSchema
{
    private static readonly XmlSchemaSet Schemas = Load();

    /// <summary>What the schema finds wrong with a score, each with line and column; empty for a valid one.</summary>
    internal static IReadOnlyList<string> Errors(byte[] score)
    {
        List<string> errors = [];
        XmlReaderSettings settings = new() { ValidationType = ValidationType.Schema, Schemas = Schemas, XmlResolver = null };
        settings.ValidationFlags |= XmlSchemaValidationFlags.ReportValidationWarnings; // a root that the schema does not know is only a warning
        settings.ValidationEventHandler += (_, e) => errors.Add($"{e.Exception.LineNumber}:{e.Exception.LinePosition}: {e.Message}");
        using XmlReader reader = XmlReader.Create(new MemoryStream(score), settings);
        XDocument.Load(reader);
        return errors;
    }

    private static XmlSchemaSet Load()
    {
        XmlSchemaSet schemas = new() { XmlResolver = new Beside() };
        using XmlReader reader = XmlReader.Create(PathOf("musicxml.xsd"));
        schemas.Add(null, reader);
        schemas.Compile();
        return schemas;
    }

    private static string PathOf(string name) => Path.Combine(Repository.Root, "tests", "WarmupConsole.Tests", "Storage", "MusicXml", "Schema", name);

    /// <summary>Whatever address the schema names, the file of that name in the folder is meant.</summary>
    private sealed class Beside : XmlResolver
    {
        public override object GetEntity(Uri absoluteUri, string? role, Type? ofObjectToReturn) =>
            File.OpenRead(PathOf(Path.GetFileName(absoluteUri.LocalPath)));
    }
}
