namespace WarmupConsole.Sessions.Marks;

/// <summary>A place in a line of words, moved on by whoever understood the next ones.</summary>
/// <param name="typed">The words with their large and small letters.</param>
internal sealed class WordCursor(IReadOnlyList<string> typed)
{
    private readonly string[] words = [.. typed.Select(word => word.ToLowerInvariant())];

    internal int Position { get; set; }

    internal int Left => words.Length - Position;

    /// <summary>The next word, or empty at the end.</summary>
    internal string Next => Left > 0 ? words[Position] : "";

    /// <summary>The next word as it was typed, or empty at the end.</summary>
    internal string NextTyped => Left > 0 ? typed[Position] : "";

    internal string Peek(int length) => string.Join(' ', words.Skip(Position).Take(length));

    internal string Take() => words[Position++];

    internal string[] TakeAll()
    {
        string[] rest = words[Position..];
        Position = words.Length;
        return rest;
    }

    /// <summary>Another cursor at the same place, to look ahead with.</summary>
    internal WordCursor Copy() => new(typed) { Position = Position };

    /// <summary>Moves past the next word when it is one of these.</summary>
    internal bool TryTake(params ReadOnlySpan<string> any)
    {
        bool found = Left > 0 && any.Contains(Next);
        Position += found ? 1 : 0;
        return found;
    }
}
