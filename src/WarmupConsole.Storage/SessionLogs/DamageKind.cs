namespace WarmupConsole.Storage.SessionLogs;

/// <summary>Every way in which a piece of a log can be unreadable; docs/session-log.md says when each is met.</summary>
public enum DamageKind
{
    TornTail,
    CutOff,
    BadChecksum,
    NotARecord,
    UnknownType,
    NewerFormat,
    SequenceGap,
    SequenceRepeated,
}
