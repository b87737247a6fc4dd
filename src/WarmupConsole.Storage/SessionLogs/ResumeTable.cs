namespace WarmupConsole.Storage.SessionLogs;

/// <summary>The table of docs/session-log.md: exactly one row fits any log.</summary>
public static class ResumeTable
{
    public static readonly IReadOnlyList<(Func<LogCondition, bool> Fits, ResumeVerdict Verdict)> Rows =
    [
        (log => log.IsHeld, ResumeVerdict.RefuseHeld),
        (log => log is { IsHeld: false, IsNewer: true }, ResumeVerdict.RefuseNewer),
        (log => log is { IsHeld: false, IsNewer: false, HasStart: false }, ResumeVerdict.RefuseWithoutStart),
        (log => log is { IsHeld: false, IsNewer: false, HasStart: true, IsFinished: true }, ResumeVerdict.RefuseFinished),
        (log => IsOpen(log) && log.IsDamaged, ResumeVerdict.ResumeDespiteDamage),
        (log => IsOpen(log) && log is { IsDamaged: false, IsTorn: true }, ResumeVerdict.ResumeAfterTornTail),
        (log => IsOpen(log) && log is { IsDamaged: false, IsTorn: false }, ResumeVerdict.Resume),
    ];

    public static ResumeVerdict Decide(LogCondition log) => Rows.Single(row => row.Fits(log)).Verdict;

    public static bool IsRefusal(ResumeVerdict verdict) => verdict >= ResumeVerdict.RefuseFinished;

    public static string Sentence(ResumeVerdict verdict, int damagedPlaces) => verdict switch
    {
        ResumeVerdict.Resume => LogTexts.Resumed,
        ResumeVerdict.ResumeAfterTornTail => LogTexts.ResumedTorn,
        ResumeVerdict.ResumeDespiteDamage => LogTexts.ResumedDamaged(damagedPlaces),
        ResumeVerdict.RefuseFinished => LogTexts.Finished,
        ResumeVerdict.RefuseWithoutStart => LogTexts.NoStart,
        ResumeVerdict.RefuseNewer => LogTexts.NewerProgram,
        _ => LogTexts.Busy,
    };

    private static bool IsOpen(LogCondition log) => log is { IsHeld: false, IsNewer: false, HasStart: true, IsFinished: false };
}
