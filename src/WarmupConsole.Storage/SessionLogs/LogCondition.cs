namespace WarmupConsole.Storage.SessionLogs;

/// <summary>What decides whether a run can go on in a log.</summary>
public readonly record struct LogCondition(bool IsHeld, bool IsNewer, bool HasStart, bool IsFinished, bool IsDamaged, bool IsTorn)
{
    public static LogCondition Of(SessionLog log) => new(
        false,
        log.Damages.Any(damage => damage.Kind == DamageKind.NewerFormat),
        log.Start is not null,
        log.IsFinished,
        log.Damages.Any(damage => !damage.IsNormal),
        log.Damages.Any(damage => damage.Kind == DamageKind.TornTail));
}
