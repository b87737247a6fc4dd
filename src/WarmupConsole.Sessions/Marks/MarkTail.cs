using System.Globalization;
using WarmupConsole.Music.Pitches;
using WarmupConsole.Music.Voices;

namespace WarmupConsole.Sessions.Marks;

/// <summary>The words after the kind: a key after "in", a pitch after "at" or "on", places; what is left over counts as a place too.</summary>
/// <param name="meant">The parts that the mark is about: a pitch without an octave is looked for in their ranges.</param>
/// <param name="notes">The choir's own note names.</param>
/// <param name="vocabulary">Tells where the next mark begins.</param>
internal sealed class MarkTail(IReadOnlyList<Part> meant, NoteNaming notes, MarkVocabulary vocabulary)
{
    private const int HighestDegree = 21;

    /// <summary>What may stand behind a tonic, the longest first; the mark keeps the tonic.</summary>
    private static readonly string[] Modes = ["major", "minor", "moll", "maj", "min", "dur", "m"];

    private static readonly string[] BeforeKey = ["in"];
    private static readonly string[] BeforePitch = ["at", "on"];

    private readonly List<string> places = [];
    private readonly List<string> leftOver = [];

    internal Pitch? Key { get; private set; }

    internal Pitch? Pitch { get; private set; }

    /// <summary>"a little" in "flat a little", or empty.</summary>
    internal string Strength { get; private set; } = "";

    internal string Place => string.Join(", ", places.Append(string.Join(' ', leftOver)).Where(place => place.Length > 0));

    internal bool IsEmpty => Key is null && Pitch is null && Place.Length == 0;

    /// <summary>True when something was not understood.</summary>
    internal bool HasWords => leftOver.Count > 0;

    /// <summary>Reads to the end, or to where another mark begins.</summary>
    internal void Read(WordCursor cursor)
    {
        while (cursor.Left > 0)
        {
            int before = cursor.Position;
            if (!TryKey(cursor) && !TryPitch(cursor) && !TryDegree(cursor) && !TryPlace(cursor) && !TryStrength(cursor))
            {
                cursor.Position = before;
                if (vocabulary.StartsMark(cursor))
                {
                    return;
                }

                leftOver.Add(cursor.Take());
            }
        }
    }

    internal void AddWords(IEnumerable<string> words) => leftOver.AddRange(words);

    /// <summary>Another key or pitch and nothing else, where one was named before: "in C and D". Else nothing is taken.</summary>
    internal bool TryAnother(WordCursor cursor, MarkTail before)
    {
        int start = cursor.Position;
        bool isKey = before.Key is not null;
        bool isNamed = isKey || before.Pitch is not null;
        cursor.TryTake(isKey ? BeforeKey : BeforePitch);
        if (isNamed && (isKey ? TakeKey(cursor) : TakePitch(cursor)) && cursor.Left == 0)
        {
            return true;
        }

        (cursor.Position, Key, Pitch) = (start, null, null);
        places.Clear();
        return false;
    }

    private bool TryKey(WordCursor cursor)
    {
        int before = cursor.Position;
        if (Key is null && cursor.TryTake(BeforeKey) && SkipKeyOf(cursor) && TakeKey(cursor))
        {
            return true;
        }

        cursor.Position = before;
        return false;
    }

    private bool TakeKey(WordCursor cursor)
    {
        int before = cursor.Position;
        bool isKey = TakePitch(cursor, out Pitch key, out _) && !WasArticle(cursor);
        if (!isKey)
        {
            cursor.Position = before;
            isKey = TakeWithMode(cursor, out key);
        }

        if (isKey)
        {
            cursor.TryTake(Modes);
            Key = key with { Octave = Music.Pitches.Pitch.MiddleC.Octave };
        }

        return isKey;
    }

    /// <summary>"Fmaj", "f#m": a tonic and its mode in one word.</summary>
    private bool TakeWithMode(WordCursor cursor, out Pitch key)
    {
        string typed = cursor.NextTyped;
        string mode = Modes.FirstOrDefault(mode => typed.EndsWith(mode, StringComparison.OrdinalIgnoreCase)) ?? "";
        bool isKey = notes.TryParseName(typed[..^mode.Length], out key) && mode.Length > 0;
        cursor.Position += isKey ? 1 : 0;
        return isKey;
    }

    /// <summary>
    /// "in a hurry" names no key: a bare "a" counts only at the end or before words about keys and places. So does "as", a key in German.
    /// </summary>
    private static bool WasArticle(WordCursor cursor)
    {
        int after = cursor.Position;
        cursor.Position--;
        bool isBareA = cursor.Take() is "a" or "as";
        bool goesOn = cursor.Left == 0 || cursor.Next is "at" or "on" || Modes.Contains(cursor.Next) || PlaceData.Book.TryTake(cursor, out _);
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
        if (Pitch is null && cursor.TryTake(BeforePitch) && SkipThe(cursor) && TakePitch(cursor))
        {
            return true;
        }

        cursor.Position = before;
        return false;
    }

    private bool TakePitch(WordCursor cursor)
    {
        bool isPitch = TakePitch(cursor, out Pitch pitch, out bool hasOctave);
        if (isPitch)
        {
            Pitch = hasOctave ? pitch : OnlyOctaveOf(pitch);
            // The log has one set of names; what is shown has the choir's.
            places.Add(Pitch is null ? PlaceData.On + pitch.Name : "");
        }

        return isPitch;
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

    /// <summary>"flat too" says no strength: it is said of others as well.</summary>
    private bool TryStrength(WordCursor cursor)
    {
        if (Strength.Length > 0 || cursor.Next == "too" || !StrengthData.Book.TryTake(cursor, out string strength))
        {
            return false;
        }

        Strength = strength;
        return true;
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
