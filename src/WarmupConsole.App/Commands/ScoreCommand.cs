using System.CommandLine;
using WarmupConsole.App.Scores;

namespace WarmupConsole.App.Commands;

/// <summary><c>warmup score</c>: what the repertoire asks of this choir.</summary>
internal static class ScoreCommand
{
    internal static Command Create(Composition composition)
    {
        Command group = new("score", ScoreTexts.About);
        group.Add(ScoreMapCommand.Create(composition));
        group.Add(ScoreLookCommand.Create(composition));
        group.Add(ScoreNeedCommand.Create(composition));
        group.Add(ScoreDrillCommand.Create(composition));
        return group;
    }
}
