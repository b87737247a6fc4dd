using System.Buffers.Text;
using System.Text.Json;

namespace WarmupConsole.Storage.SessionLogs;

/// <summary>
/// The fields of a line that are not of the envelope. One pass over the line notes where each stands; its value is read when an event asks for it. Of a
/// field that stands twice the last counts.
/// </summary>
/// <param name="line">The whole line.</param>
/// <param name="places">Room for them, to begin with.</param>
internal ref struct RecordFields(ReadOnlySpan<byte> line, Span<RecordFields.Place> places)
{
    private static readonly SameBytes<string> Words = new(Word);
    private static readonly SameBytes<IReadOnlyList<string>> WordLists = new(text => List(text, (ref Utf8JsonReader reader) => reader.GetString() ?? throw new JsonException()));
    private static readonly SameBytes<IReadOnlyList<int>> NumberLists = new(text => List(text, (ref Utf8JsonReader reader) => reader.GetInt32()));

    private readonly ReadOnlySpan<byte> line = line;
    private Span<Place> places = places;
    private int count;

    private delegate T Element<T>(ref Utf8JsonReader reader);

    /// <summary>Notes a field and moves the reader behind its value.</summary>
    /// <param name="reader">At the name.</param>
    /// <param name="offset">Where in the line the reader began.</param>
    internal void Add(ref Utf8JsonReader reader, int offset)
    {
        (int name, int nameLength) = (offset + (int)reader.TokenStartIndex + 1, reader.ValueSpan.Length);
        reader.Read();
        (int start, JsonTokenType kind) = (offset + (int)reader.TokenStartIndex, reader.TokenType);
        reader.Skip();
        Add(new(name, nameLength, start, offset + (int)reader.BytesConsumed - start, kind));
    }

    internal void Add(in Place place)
    {
        if (count == places.Length)
        {
            Span<Place> more = new Place[2 * count];
            places.CopyTo(more);
            places = more;
        }

        places[count++] = place;
    }

    /// <exception cref="JsonException">It is missing or no whole number; so below, for what each of them reads.</exception>
    internal readonly int Int(ReadOnlySpan<byte> name)
    {
        ReadOnlySpan<byte> digits = Value(name, JsonTokenType.Number);
        return Utf8Parser.TryParse(digits, out int value, out int used) && used == digits.Length ? value : throw new JsonException();
    }

    internal readonly int? IntOrNull(ReadOnlySpan<byte> name) => Of(name).Kind == JsonTokenType.Null ? null : Int(name);

    internal readonly long Long(ReadOnlySpan<byte> name)
    {
        ReadOnlySpan<byte> digits = Value(name, JsonTokenType.Number);
        return Utf8Parser.TryParse(digits, out long value, out int used) && used == digits.Length ? value : throw new JsonException();
    }

    internal readonly bool Yes(ReadOnlySpan<byte> name) => Of(name).Kind switch
    {
        JsonTokenType.True => true,
        JsonTokenType.False => false,
        _ => throw new JsonException(),
    };

    internal readonly string Text(ReadOnlySpan<byte> name) => Words.Of(Value(name, JsonTokenType.String));

    internal readonly string? TextOrNull(ReadOnlySpan<byte> name) => Of(name).Kind == JsonTokenType.Null ? null : Text(name);

    /// <summary>Empty when it is missing.</summary>
    internal readonly string TextOrEmpty(ReadOnlySpan<byte> name) => Find(name) < 0 ? "" : Text(name);

    internal readonly IReadOnlyList<string> Texts(ReadOnlySpan<byte> name) => WordLists.Of(Value(name, JsonTokenType.StartArray));

    internal readonly IReadOnlyList<bool> Yeses(ReadOnlySpan<byte> name) => List(Value(name, JsonTokenType.StartArray), (ref Utf8JsonReader reader) => reader.GetBoolean());

    internal readonly IReadOnlyList<int> Ints(ReadOnlySpan<byte> name) => NumberLists.Of(Value(name, JsonTokenType.StartArray));

    private readonly ReadOnlySpan<byte> Value(ReadOnlySpan<byte> name, JsonTokenType kind)
    {
        Place place = Of(name);
        return place.Kind == kind ? line.Slice(place.Start, place.Length) : throw new JsonException();
    }

    private readonly Place Of(ReadOnlySpan<byte> name) => Find(name) is >= 0 and int index ? places[index] : throw new JsonException();

    private readonly int Find(ReadOnlySpan<byte> name)
    {
        int index = count - 1;
        while (index >= 0 && !line.Slice(places[index].Name, places[index].NameLength).SequenceEqual(name))
        {
            index--;
        }

        return index;
    }

    private static string Word(ReadOnlySpan<byte> text)
    {
        Utf8JsonReader reader = new(text);
        reader.Read();
        return reader.GetString()!;
    }

    private static T[] List<T>(ReadOnlySpan<byte> text, Element<T> element)
    {
        Utf8JsonReader reader = new(text);
        reader.Read();
        List<T> all = [];
        while (reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            all.Add(element(ref reader));
        }

        return [.. all];
    }

    /// <summary>Where the name of a field stands, without its quotes, and where its value; and what that is.</summary>
    internal readonly record struct Place(int Name, int NameLength, int Start, int Length, JsonTokenType Kind);
}
