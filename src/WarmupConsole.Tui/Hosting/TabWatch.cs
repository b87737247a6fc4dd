namespace WarmupConsole.Tui.Hosting;

/// <summary>
/// Finds the Tab key in what a terminal sends: its single byte outside escape sequences and pasted text, or its sequence in the
/// keyboard protocol that newer terminals speak. Whatever it misses still comes to the window as a key.
/// </summary>
/// <param name="found">Called at once, on the thread that reads.</param>
public sealed class TabWatch(Action found)
{
    private const char Escape = '\u001b';
    private const char Tab = '\t';
    private const string PasteBegins = "200~";
    private const string PasteEnds = "201~";
    private const int LongestSequence = 16;

    // CSI u: code point 9, pressed, with no modifier.
    private static readonly string[] TabSequences = ["9u", "9;1u", "9;1:1u"];

    private readonly char[] _sequence = new char[LongestSequence];
    private Place _place;
    private int _length;
    private bool _isPasting;

    private enum Place
    {
        Text,
        AfterEscape,

        /// <summary>The escape ended a read, so it was the Esc key, or the rest of a sequence is late.</summary>
        AfterLoneEscape,
        Sequence,
    }

    /// <summary>What is seen from now on was sent later than what was seen before.</summary>
    public void BeginRead() => _place = _place == Place.AfterEscape ? Place.AfterLoneEscape : _place;

    /// <summary>Takes the next character.</summary>
    public void See(char character)
    {
        _place = (_place, character) switch
        {
            (Place.Sequence, >= ' ' and <= '~') => SeeInSequence(character),
            (Place.AfterEscape or Place.AfterLoneEscape, '[') => BeginSequence(),
            (_, Escape) => Place.AfterEscape,
            (Place.AfterEscape, _) => Place.Text, // Alt and a key
            _ => SeeText(character),
        };
    }

    private Place SeeText(char character)
    {
        if (character == Tab && !_isPasting)
        {
            found();
        }

        return Place.Text;
    }

    private Place BeginSequence()
    {
        _length = 0;
        return Place.Sequence;
    }

    private Place SeeInSequence(char character)
    {
        if (_length < LongestSequence)
        {
            _sequence[_length++] = character;
        }

        if (character < '@')
        {
            return Place.Sequence;
        }

        EndSequence(_sequence.AsSpan(0, _length));
        return Place.Text;
    }

    private void EndSequence(ReadOnlySpan<char> sequence)
    {
        _isPasting = sequence switch
        {
            PasteBegins => true,
            PasteEnds => false,
            _ => _isPasting,
        };
        foreach (string tab in TabSequences)
        {
            if (sequence.SequenceEqual(tab) && !_isPasting)
            {
                found();
            }
        }
    }
}
