using WarmupConsole.Music.Rhythm;
using WarmupConsole.Tests.Storage.SessionLogs;

namespace WarmupConsole.Tests.Simulation;

/// <summary>When something goes wrong, and what. A third of all evenings is free of it.</summary>
internal sealed class Misfortunes
{
    private static readonly Misfortune[] Kinds = Enum.GetValues<Misfortune>();
    private static readonly Moment Never = new(long.MaxValue);

    private readonly Random _random;
    private readonly bool _isCursed;
    private bool _isSlow;

    internal Misfortunes(Random random, Moment now)
    {
        (_random, _isCursed) = (random, random.Next(3) > 0);
        NextAt = _isCursed ? now + Gap() : Never;
    }

    internal Moment NextAt { get; private set; }

    /// <summary>True once the disk refused something or the run was cut off.</summary>
    internal bool HaveTouchedLog { get; private set; }

    internal Misfortune Take(Moment now)
    {
        NextAt = now + Gap();
        Misfortune next = Kinds[_random.Next(Kinds.Length)];
        HaveTouchedLog |= next is Misfortune.DiskFull or Misfortune.WritesTorn or Misfortune.FlushFails or Misfortune.ConsoleKilled or Misfortune.PowerCut;
        return next;
    }

    internal void Befall(Misfortune disk, FaultyFile file)
    {
        file.RefusesWrites = disk is Misfortune.DiskFull or Misfortune.WritesTorn;
        file.TornBytes = disk == Misfortune.WritesTorn ? _random.Next(200) : 0;
        file.RefusesFlush = disk == Misfortune.FlushFails;
        _isSlow = disk == Misfortune.DiskSlow;
    }

    /// <summary>How long the log's thread takes until what was posted now is dealt with.</summary>
    internal TimeSpan DiskDelay() => TimeSpan.FromMilliseconds(_isSlow ? _random.Next(2500) : _random.Next(3));

    private TimeSpan Gap() => TimeSpan.FromMilliseconds(_random.Next(20_000));
}
