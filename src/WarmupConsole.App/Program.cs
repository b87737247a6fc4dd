using WarmupConsole.App;
using WarmupConsole.App.Commands;

return CommandLine.Run(args, Composition.OfThisMachine(), Console.Out, Console.Error);
