namespace WarmupConsole.Sessions.Marks;

/// <summary>A mark of the running session.</summary>
/// <param name="Id">Counts from 1 in this session and is never used again.</param>
/// <param name="Content">What it says.</param>
/// <param name="Anchor">What it refers to.</param>
/// <param name="Echo">The mark in words, for the screen: "altos flat in E".</param>
/// <param name="IsFlushed">True once the log holds it safely on disk.</param>
public sealed record LiveMark(int Id, MarkContent Content, MarkAnchor Anchor, string Echo, bool IsFlushed)
{
    /// <summary>Its newest fact (made or moved), counted among all facts about marks that this run has recorded; 0 when an earlier run did.</summary>
    public int Fact { get; init; }

    /// <summary>True for a pinned moment that has no words yet.</summary>
    public bool IsPin => Content.Raw.Length == 0;
}
