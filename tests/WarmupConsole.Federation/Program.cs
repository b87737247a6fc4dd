using WarmupConsole.Federation;

// federation CHOIRS: makes the logs of so many simulated choirs and asks the questions of docs/federation.md of them.
// federation speed FOLDER: reads the logs of one choir with DuckDB and with the console's own reader.
return args switch
{
    ["speed", var folder] => Speed.Compare(folder),
    [var choirs] when int.TryParse(choirs, out int number) && number > 0 => Questions.Ask(number),
    _ => Usage(),
};

static int Usage()
{
    Console.Error.WriteLine("federation CHOIRS | federation speed FOLDER");
    return 2;
}
