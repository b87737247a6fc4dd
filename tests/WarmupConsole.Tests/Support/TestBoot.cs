using System.Runtime.CompilerServices;
using WarmupConsole.Tests.Storage.SessionLogs;

namespace WarmupConsole.Tests.Support;

internal static class TestBoot
{
    [ModuleInitializer]
    internal static void Init()
    {
        LogChild.LiveIfAsked();

        // The screen library works in memory then; without it a run started from a terminal would take that terminal over.
        Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");

        // Each application holds a pool thread; with few threads parallel tests would wait for one another.
        ThreadPool.SetMinThreads(64, 64);
    }
}
