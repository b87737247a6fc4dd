using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace WarmupConsole.Storage.Yaml;

/// <summary>Turns parser events into nodes; refuses what no plain file needs: anchors, aliases, tags, deep nesting, a second document.</summary>
internal sealed class YamlTreeBuilder(Parser parser, ProblemList problems)
{
    private const int DeepestNesting = 60;

    /// <summary>True after a fault behind which nothing can be read.</summary>
    private bool gaveUp;

    internal static YamlPlace PlaceOf(Mark start, Mark end)
    {
        bool oneLine = end.Line == start.Line && end.Column > start.Column;
        return new((int)Math.Max(1, start.Line), (int)Math.Max(1, start.Column), oneLine ? (int)(end.Column - start.Column) : 1);
    }

    internal YamlNode? Build()
    {
        YamlNode? root = null;
        while (!gaveUp && parser.MoveNext())
        {
            switch (parser.Current)
            {
                case DocumentStart second when root is not null:
                    GiveUp(second, StorageTexts.SecondDocument);
                    break;
                case NodeEvent or AnchorAlias:
                    root = Node(0);
                    break;
            }
        }

        return root;
    }

    /// <summary>Reads the node whose first event is current, to its last event.</summary>
    private YamlNode? Node(int depth)
    {
        if (depth > DeepestNesting)
        {
            return GiveUp(parser.Current!, StorageTexts.TooDeep);
        }

        if (parser.Current is AnchorAlias alias)
        {
            problems.Add(PlaceOf(alias.Start, alias.End), StorageTexts.Alias);
            return new YamlText("", true, PlaceOf(alias.Start, alias.End), false, 0);
        }

        if (parser.Current is not NodeEvent node)
        {
            // The parser leaves out one of a pair when a name is empty ("- : x").
            return GiveUp(parser.Current!, StorageTexts.NotYaml("a name or its value is missing"));
        }

        RefuseExtras(node);
        return node switch
        {
            Scalar scalar => Text(scalar),
            SequenceStart start => List(start, depth),
            MappingStart start => Map(start, depth),
            _ => null,
        };
    }

    private void RefuseExtras(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty)
        {
            problems.Add(PlaceOf(node.Start, node.End), StorageTexts.Anchor);
        }

        if (!node.Tag.IsEmpty)
        {
            problems.Add(PlaceOf(node.Start, node.End), StorageTexts.Tag);
        }
    }

    private YamlText Text(Scalar scalar)
    {
        YamlPlace place = PlaceOf(scalar.Start, scalar.End);
        string value = scalar.Style is ScalarStyle.Folded or ScalarStyle.Literal ? scalar.Value.ReplaceLineEndings(" ").TrimEnd() : scalar.Value;
        int column = place.Column + (scalar.Style is ScalarStyle.SingleQuoted or ScalarStyle.DoubleQuoted ? 1 : 0);
        string line = problems.Source.Line(place.Line);
        bool verbatim = column - 1 <= line.Length && line.AsSpan(column - 1).StartsWith(value, StringComparison.Ordinal);
        YamlText text = new(value, scalar.Style == ScalarStyle.Plain, place, verbatim, column);
        int forbidden = Printable.FirstForbidden(value);
        if (forbidden >= 0)
        {
            problems.Add(text.Stretch(forbidden, 1), StorageTexts.Forbidden(value[forbidden]));
        }

        return text;
    }

    private YamlList? List(SequenceStart start, int depth)
    {
        List<YamlNode> items = [];
        while (Next() && parser.Current is not SequenceEnd)
        {
            if (Node(depth + 1) is { } item)
            {
                items.Add(item);
            }
        }

        return gaveUp ? null : new(items, PlaceOf(start.Start, start.End));
    }

    private YamlMap? Map(MappingStart start, int depth)
    {
        List<YamlField> fields = [];
        HashSet<string> names = [];
        while (Next() && parser.Current is not MappingEnd)
        {
            YamlNode? name = Node(depth + 1);
            YamlNode? value = Next() ? Node(depth + 1) : null;
            if (name is not null && value is not null && IsNewName(name, names))
            {
                fields.Add(new((YamlText)name, value));
            }
        }

        return gaveUp ? null : new(fields, PlaceOf(start.Start, start.End));
    }

    private bool IsNewName(YamlNode name, HashSet<string> names)
    {
        if (name is not YamlText text)
        {
            problems.Add(name, StorageTexts.NameNotText);
            return false;
        }

        bool isNew = names.Add(text.Value);
        if (!isNew)
        {
            problems.Add(text, StorageTexts.Twice(text.Value));
        }

        return isNew;
    }

    private bool Next() => !gaveUp && parser.MoveNext();

    private YamlNode? GiveUp(ParsingEvent at, string message)
    {
        problems.Add(PlaceOf(at.Start, at.End), message);
        gaveUp = true;
        return null;
    }
}
