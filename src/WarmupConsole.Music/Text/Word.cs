namespace WarmupConsole.Music.Text;

/// <summary>A stretch without spaces, and where it stands.</summary>
internal readonly record struct Word(int Offset, string Text)
{
    internal TextError Error(string message) => new(Offset, Text.Length, message);

    internal static List<Word> Split(string text)
    {
        List<Word> words = [];
        int start = -1;
        for (int at = 0; at <= text.Length; at++)
        {
            bool space = at == text.Length || char.IsWhiteSpace(text[at]);
            if (space && start >= 0)
            {
                words.Add(new(start, text[start..at]));
                start = -1;
            }
            else if (!space && start < 0)
            {
                start = at;
            }
        }

        return words;
    }

    /// <summary>The parts before and after the first colon; the second is empty with its offset at the end when there is none.</summary>
    internal (Word Head, Word? Tail) AtColon()
    {
        int colon = Text.IndexOf(':', StringComparison.Ordinal);
        return colon < 0 ? (this, null) : (new(Offset, Text[..colon]), new Word(Offset + colon + 1, Text[(colon + 1)..]));
    }
}
