using WarmupConsole.Midi.Timing;
using WarmupConsole.Music.Rhythm;

namespace WarmupConsole.Tests.Simulation;

/// <summary>The last things that happened, put in words only when somebody asks.</summary>
internal sealed class Trail(IMonotonicClock clock)
{
    private const int Kept = 20;

    private readonly Queue<(Moment At, string What, object? Detail)> _events = new(Kept + 1);
    private readonly Moment _start = clock.Now;

    internal void Add(string what, object? detail = null)
    {
        _events.Enqueue((clock.Now, what, detail));
        if (_events.Count > Kept)
        {
            _events.Dequeue();
        }
    }

    public override string ToString() => string.Join('\n', _events.Select(happened =>
        $"  {(happened.At - _start).TotalSeconds,10:F3} s  {happened.What} {Shown(happened.Detail)}".TrimEnd()));

    // A hostile mark may be long and full of control characters.
    private static string Shown(object? detail)
    {
        string text = detail?.ToString() ?? "";
        string cut = text.Length > 200 ? text[..200] + "..." : text;
        return string.Concat(cut.Select(letter => char.IsControl(letter) ? '.' : letter));
    }
}
