using WarmupConsole.Music.Exercises;

namespace WarmupConsole.Sessions.Planning.Next;

/// <summary>What it takes to teach what nobody has sung yet.</summary>
internal static class NewTalk
{
    private const int SungSeconds = 60;

    internal static int Seconds(Exercise exercise) => exercise.IsSung ? Math.Max(SungSeconds, exercise.TalkSeconds) : exercise.TalkSeconds;
}
