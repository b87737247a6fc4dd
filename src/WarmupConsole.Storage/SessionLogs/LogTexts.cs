namespace WarmupConsole.Storage.SessionLogs;

/// <summary>Every sentence about session logs.</summary>
public static class LogTexts
{
    public const string Busy = "another console writes this log just now; close that one first";
    public const string NewerProgram = "this log was written by a newer version; update the program to go on with it";
    public const string NoStart = "the beginning of this log is not whole, so it cannot be gone on with; start a new run";
    public const string Finished = "this run came to its end; start a new one";
    public const string Resumed = "the run goes on where it was cut off";
    public const string ResumedTorn = "the last record was not wholly written and is left out; the run goes on after it";
    public const string QueueFull = "the disk does not keep up and this event could not be kept; save the log elsewhere now";

    public static string ResumedDamaged(int places) => $"the log is damaged in {places} place{(places == 1 ? "" : "s")}; the run goes on with what is whole";

    /// <summary>A reason that says itself that nothing can be written is not told twice.</summary>
    public static string Failed(string reason) =>
        $"Go on: all is kept, and leaving asks where to save it. The log cannot be written: {reason.Replace(StorageTexts.Unwritable(""), "", StringComparison.Ordinal)}.";

    public static string ForeignLock(string machine) =>
        $"this log is locked by another machine ({machine}); close the console there, or delete the .lock file if it is closed";

    public static string Damage(DamageKind kind) => kind switch
    {
        DamageKind.TornTail => "the last record was cut off while it was written",
        DamageKind.CutOff => "a record was cut off while it was written",
        DamageKind.BadChecksum => "the line does not match its checksum: it was changed",
        DamageKind.NotARecord => "the line is no record of a session log",
        DamageKind.UnknownType => "the record is of a kind that this program does not know",
        DamageKind.NewerFormat => "the record was written by a newer version; update the program",
        DamageKind.SequenceGap => "records are missing",
        _ => "a record has a number that came before",
    };

    public static string Gap(long first, long last) => first == last ? $"record {first} is missing" : $"records {first} to {last} are missing";
}
