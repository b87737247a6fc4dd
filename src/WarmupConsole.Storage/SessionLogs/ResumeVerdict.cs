namespace WarmupConsole.Storage.SessionLogs;

/// <summary>What is to be done with a log that a run might go on with.</summary>
public enum ResumeVerdict
{
    Resume,
    ResumeAfterTornTail,
    ResumeDespiteDamage,
    RefuseFinished,
    RefuseWithoutStart,
    RefuseNewer,
    RefuseHeld,
}
