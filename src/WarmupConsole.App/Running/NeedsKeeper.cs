using WarmupConsole.Sessions.Events;
using WarmupConsole.Sessions.Live;
using WarmupConsole.Sessions.Planning;
using WarmupConsole.Storage.Folders;
using WarmupConsole.Storage.Needs;
using WarmupConsole.Storage.Yaml;

namespace WarmupConsole.App.Running;

/// <summary>Makes needs of the marks of a rehearsal, one after the other and never on the host's thread; what became of each is told.</summary>
internal sealed class NeedsKeeper(ChoirFolder folder, Action<LiveInput> tell) : IDisposable
{
    private readonly Lock _gate = new();
    private Task _last = Task.CompletedTask;

    /// <summary>Hands a mark over; does not wait.</summary>
    internal void Keep(RehearsalMarked mark)
    {
        lock (_gate)
        {
            _last = _last.ContinueWith(_ => tell(Write(mark)), TaskScheduler.Default);
        }
    }

    /// <summary>Adds the needs to the file as it is now; the mark itself is in the log, whatever happens here.</summary>
    internal LiveInput Write(RehearsalMarked mark)
    {
        IReadOnlyList<IReadOnlyList<(string Name, string Value)>> needs = RehearsalNeeds.Of(mark, folder.Choir);
        FileRead<NeedsBook> book = NeedsBook.Open(folder);
        foreach (IReadOnlyList<(string Name, string Value)> need in needs)
        {
            book = book.IsGood ? book.Value.WithAsWritten(need) : book;
        }

        return needs.Count == 0 ? new LiveInput.News(AppTexts.NoNeedOf)
            : !book.IsGood ? new LiveInput.Warning(AppTexts.NeedNotKept(book.Problems[0].ToString()))
            : book.Value.Save() is { } reason ? new LiveInput.Warning(AppTexts.NeedNotKept(reason))
            : new LiveInput.News(AppTexts.NeedMade(book.Value.Needs.Count, Printable.Line(book.Value.Needs[^1].WordsIn(book.Value.Notes))));
    }

    /// <summary>Waits for what was handed over.</summary>
    public void Dispose()
    {
        lock (_gate)
        {
            _last.Wait();
        }
    }
}
