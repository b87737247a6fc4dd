using System.Globalization;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Marks;

/// <summary>The words after the kind: a key after "in", a pitch after "at" or "on", places; what is left over counts as a place too.</summary>
/// <param name="meant">The parts that the mark is about: a pitch without an octave is looked for in their ranges.</param>
/// <param name="notes">The choir's own note names.</param>
internal sealed class MarkTail(IReadOnlyList<Part> meant, NoteNaming notes)
{
    private const int HighestDegree = 21;
    private readonly List<string> places = [];
    private readonly List<string> leftOver = [];

    internal Pitch? Key { get; private set; }

    internal Pitch? Pitch { get; private set; }

    internal string Place => string.Join(", ", places.Append(string.Join(' ', leftOver)).Where(place => place.Length > 0));

    internal void Read(WordCursor cursor)
    {
        while (cursor.Left > 0)
        {
            int before = cursor.Position;
            if (!TryKey(cursor) && !TryPitch(cursor) && !TryDegree(cursor) && !TryPlace(cursor))
            {
                cursor.Position = before;
                leftOver.Add(cursor.Take());
            }
        }
    }

    private bool TryKey(WordCursor cursor)
    {
        int before = cursor.Position;
        if (Key is null && cursor.TryTake("in") && SkipKeyOf(cursor) && TakePitch(cursor, out Pitch key, out _) && !WasArticle(cursor))
        {
            cursor.TryTake("major");
            Key = key with { Octave = Music.Pitches.Pitch.MiddleC.Octave };
            return true;
        }

        cursor.Position = before;
        return false;
    }

    /// <summary>
    /// "in a hurry" names no key: a bare "a" counts only at the end or before words about keys and places. So does "as", a key in German.
    /// </summary>
    private static bool WasArticle(WordCursor cursor)
    {
        int after = cursor.Position;
        cursor.Position--;
        bool isBareA = cursor.Take() is "a" or "as";
        bool goesOn = cursor.Left == 0 || cursor.Next is "at" or "on" or "major" or "minor" || PlaceData.Book.TryTake(cursor, out _);
        cursor.Position = after;
        return isBareA && !goesOn;
    }

    private static bool SkipKeyOf(WordCursor cursor)
    {
        cursor.TryTake("the");
        return !cursor.TryTake("key") || cursor.TryTake("of");
    }

    private bool TryPitch(WordCursor cursor)
    {
        int before = cursor.Position;
        if (Pitch is null && cursor.TryTake("at", "on") && SkipThe(cursor) && TakePitch(cursor, out Pitch pitch, out bool hasOctave))
        {
            Pitch = hasOctave ? pitch : OnlyOctaveOf(pitch);
            places.Add(Pitch is null ? "on " + notes.WriteName(pitch) : "");
            return true;
        }

        cursor.Position = before;
        return false;
    }

    private static bool SkipThe(WordCursor cursor)
    {
        cursor.TryTake("the");
        return true;
    }

    private bool TryDegree(WordCursor cursor)
    {
        int before = cursor.Position;
        bool introduced = cursor.TryTake("on", "at") & SkipThe(cursor);
        introduced |= cursor.TryTake("degree");
        if (introduced && DegreeIn(cursor.Next) is { } degree)
        {
            cursor.Take();
            places.Add("degree " + degree);
            return true;
        }

        cursor.Position = before;
        return false;
    }

    private bool TryPlace(WordCursor cursor)
    {
        bool found = PlaceData.Book.TryTake(cursor, out string place);
        places.Add(found ? place : "");
        return found;
    }

    /// <summary>"5", "5th", "b3", "#4": the text of a degree, or null.</summary>
    private static string? DegreeIn(string word)
    {
        string number = word.TrimStart('b', '#', '♭', '♯');
        string signs = word[..^number.Length].Replace('♭', 'b').Replace('♯', '#');
        number = signs.Length == 0 ? WithoutOrdinal(number) : number;
        return signs.Length <= 1 && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int value) && value is >= 1 and <= HighestDegree
            ? signs + value.ToString(CultureInfo.InvariantCulture)
            : null;
    }

    private static string WithoutOrdinal(string number) =>
        number.Length > 2 && number[^2..] is "st" or "nd" or "rd" or "th" ? number[..^2] : number;

    /// <summary>"eb", "e flat", "eb4", "e flat 4", or as the choir names its notes; the octave is optional.</summary>
    private bool TakePitch(WordCursor cursor, out Pitch pitch, out bool hasOctave)
    {
        string typed = cursor.NextTyped;
        if (!notes.TryParseName(typed, out pitch))
        {
            hasOctave = TryParse(typed, out pitch);
            cursor.Position += hasOctave ? 1 : 0;
            return hasOctave;
        }

        cursor.Take();
        int sign = cursor.TryTake("flat") ? -1 : cursor.TryTake("sharp") ? 1 : 0;
        pitch = pitch with { Alteration = pitch.Alteration + sign };
        hasOctave = sign == 0 ? TryBareLetter(typed, ref pitch) : TryOctaveWord(cursor, ref pitch);
        return true;
    }

    /// <summary>"c" and "C" say the octave in some namings; that holds when somebody meant can sing it, else the letter is a name only.</summary>
    private bool TryBareLetter(string typed, ref Pitch pitch)
    {
        bool isSung = TryParse(typed, out Pitch inOctave) && IsSung(inOctave);
        pitch = isSung ? inOctave : pitch;
        return isSung;
    }

    /// <summary>The octave as a word of its own, after "e flat".</summary>
    private bool TryOctaveWord(WordCursor cursor, ref Pitch pitch)
    {
        if (cursor.Left == 0 || !TryParse(notes.WriteName(pitch).ToLowerInvariant() + cursor.Next, out Pitch inOctave))
        {
            return false;
        }

        cursor.Take();
        pitch = inOctave;
        return true;
    }

    /// <summary>A large letter that nobody meant can sing was a small one typed in a hurry.</summary>
    private bool TryParse(string typed, out Pitch pitch)
    {
        bool isPitch = notes.TryParse(typed, out pitch);
        pitch = isPitch && !IsSung(pitch) && notes.TryParse(typed.ToLowerInvariant(), out Pitch small) && IsSung(small) ? small : pitch;
        return isPitch;
    }

    private bool IsSung(Pitch pitch) => meant.Any(part => part.Range.Extreme.Contains(pitch.Midi));

    /// <summary>The pitch in the one octave that the parts can sing it in, or null when there are several or none.</summary>
    private Pitch? OnlyOctaveOf(Pitch name)
    {
        Pitch[] fitting = [.. Enumerable.Range(0, 9).Select(octave => name with { Octave = octave })
            .Where(IsSung)];
        return fitting.Length == 1 ? fitting[0] : null;
    }
}
