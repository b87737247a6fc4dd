namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>
/// What everything is worth in a plan, in whole points; docs/planner.md tells why. Only their proportions matter. Points of a list are for the
/// first step that serves it, for the second and so on.
/// </summary>
internal static class PlanPoints
{
    /// <summary>A finding, approached from both sides; and for each per cent of the time that it surely comes.</summary>
    internal const int Finding = 300;
    internal const int FindingPerPercent = 4;
    internal const int FindingAgain = 120;

    /// <summary>The same on a vowel or at a loudness at which it fails.</summary>
    internal const int OnItsVowel = 100;
    internal const int AtItsLoudness = 60;

    /// <summary>What had too much to do, answered on a half-closed sound, softly, from above.</summary>
    internal const int OnHalfClosed = 100;
    internal const int Softly = 60;
    internal const int FromAbove = 60;

    /// <summary>
    /// A step that takes a part where it is to be spared, for each such key up to five; it is chosen only where no plan without such steps keeps the limits.
    /// </summary>
    internal const int CrossedKey = -60;
    internal const int MostCrossedKeys = 5;

    /// <summary>Per cent of its points that a finding has when it gets better or worse by itself.</summary>
    internal const int WhenBetter = 75;
    internal const int WhenWorse = 125;

    /// <summary>What was marked last time, and for each key in which it was.</summary>
    internal const int Heard = 150;
    internal const int HeardPerKey = 30;
    internal const int MostHeardKeys = 5;
    internal const int HeardAgain = 40;

    /// <summary>What the director asked for: a pitch, a region or a purpose; and when its last day is within two weeks.</summary>
    internal const int Asked = 350;
    internal const int AskedAgain = 80;
    internal const int AskedSoon = 100;

    /// <summary>A purpose, and for each week that it was not served.</summary>
    internal const int Purpose = 16;
    internal const int PurposePerWeek = 12;
    internal const int MostPurposeWeeks = 8;
    internal const int PurposeAgain = 6;

    /// <summary>A part sings into the lowest or highest quarter of its comfortable range.</summary>
    internal const int RangeEnd = 30;

    /// <summary>Exercises of the last plan that stay, the first of them and those after it: some habit is good, much is not.</summary>
    internal static IReadOnlyList<int> Habit { get; } = [50, 50, 40, 20];

    /// <summary>For each of the last three plans beyond the first that had it: what comes every week wears out.</summary>
    internal const int Worn = -40;

    /// <summary>For each week that a known exercise was not sung, from the fourth on.</summary>
    internal const int Rested = 10;
    internal const int MostRestedWeeks = 6;
    internal const int RestedFromWeek = 4;

    /// <summary>An exercise that the choir never sang.</summary>
    internal const int New = 30;

    /// <summary>Last time never came to it.</summary>
    internal const int Owed = 150;

    /// <summary>For each two points of difficulty up to that of the week, and for each one beyond it.</summary>
    internal const int DifficultyHalf = 2;
    internal const int TooDifficult = -1;

    /// <summary>A ladder that goes beyond comfortable in the last third, and for each two per cent of its reach.</summary>
    internal const int Peak = 40;

    /// <summary>For each different key, up to five: a ladder should be one; and for each beyond seven, since there and back it sounds nearly twice.</summary>
    internal const int Key = 8;
    internal const int MostKeys = 5;
    internal const int LongLadder = -20;
    internal const int LongBeyondKeys = 7;

    /// <summary>For each round away from the usual number.</summary>
    internal const int Round = -6;

    /// <summary>Tonight: half-closed and slow when tired or with colds, no quick and complex ones; canons and chords where a part is thin.</summary>
    internal const int Gentle = 40;
    internal const int Taxing = -50;
    internal const int ThinPart = -80;

    /// <summary>How many times the points of what the director wants to focus on count.</summary>
    internal const int FocusTimes = 3;

    /// <summary>For each variant before this one that had the exercise.</summary>
    internal const int HadInVariant = -120;
}
