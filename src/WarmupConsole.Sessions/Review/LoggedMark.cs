using WarmupConsole.Sessions.Events;

namespace WarmupConsole.Sessions.Review;

/// <summary>A mark while its log is read: it may still be moved or taken back.</summary>
/// <param name="Made">As it was made.</param>
/// <param name="Step">Where it belongs now.</param>
/// <param name="Rung">Where it belongs now.</param>
/// <param name="RungsBefore">How many rungs had begun when it was made.</param>
/// <param name="WasMoved">True when the director said which rung it means.</param>
/// <param name="At">Wall time.</param>
internal sealed record LoggedMark(MarkMade Made, int Step, int Rung, int RungsBefore, bool WasMoved, DateTimeOffset At)
{
    /// <summary>A pin with the words that it got later.</summary>
    public LoggedMark InWords(MarkWorded worded) => this with
    {
        Made = Made with
        {
            Raw = worded.Raw,
            Parts = worded.Parts,
            Kind = worded.Kind,
            Key = worded.Key,
            KeyNamed = worded.KeyNamed,
            Pitch = worded.Pitch,
            Place = worded.Place,
            Strength = worded.Strength,
        },
    };
}
