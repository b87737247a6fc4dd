using System.Diagnostics.CodeAnalysis;

namespace WarmupConsole.Tests.Simulation;

/// <summary>What must hold. The words are made only when it does not.</summary>
internal static class Law
{
    internal static void Holds([DoesNotReturnIf(false)] bool isSo, string otherwise, object? about = null)
    {
        if (!isSo)
        {
            Broken(otherwise, about);
        }
    }

    [DoesNotReturn]
    internal static void Broken(string what, object? about) => throw new InvalidOperationException($"{what}: {about}.");
}
