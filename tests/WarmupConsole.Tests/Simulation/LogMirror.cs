using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Review;
using WarmupConsole.Storage.SessionLogs;
using WarmupConsole.Tests.Storage.SessionLogs;

namespace WarmupConsole.Tests.Simulation;

/// <summary>Reads a log while it is written, line by line, and folds it.</summary>
internal sealed class LogMirror(FaultyFile file)
{
    private int _offset;
    private int _drops;

    internal SessionFacts Facts { get; private set; } = SessionFacts.None;

    internal long LastSequence { get; private set; }

    /// <summary>Takes in what was added.</summary>
    internal void Follow()
    {
        if (_drops != file.Drops)
        {
            (_offset, _drops) = (0, file.Drops);
        }

        ReadOnlySpan<byte> added = file.Held[_offset..];
        int whole = added.LastIndexOf((byte)'\n') + 1;
        foreach (SessionRecord record in SessionLogReader.Read(added[..whole]).Records)
        {
            Take(record);
        }

        _offset += whole;
    }

    // A record that was written twice is no news.
    private void Take(SessionRecord record)
    {
        if (record.Sequence > LastSequence)
        {
            Law.Holds(record.Sequence == LastSequence + 1, "A record is missing before", record);
            Facts = Facts.After(record.Event);
            LastSequence = record.Sequence;
        }
    }

    /// <summary>The same facts, compared without making words of them.</summary>
    internal static bool AreSame(SessionFacts a, SessionFacts b) =>
        a with { Keys = b.Keys, Marks = b.Marks, Order = b.Order } == b && a.Order.SequenceEqual(b.Order) && a.Keys.SequenceEqual(b.Keys) && a.Marks.SequenceEqual(b.Marks);

    internal static string Words(SessionFacts facts) =>
        $"{facts with { Keys = [], Marks = [], Order = [] }} order {string.Join(' ', facts.Order)} keys {string.Join(' ', facts.Keys)} marks {string.Join(' ', facts.Marks)}";
}
