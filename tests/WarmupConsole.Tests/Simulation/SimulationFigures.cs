namespace WarmupConsole.Tests.Simulation;

/// <summary>How much happened: a simulation in which nothing happens proves nothing.</summary>
internal sealed record SimulationFigures
{
    public long Inputs { get; set; }

    public long Misfortunes { get; set; }

    public long Notes { get; set; }

    public long Resumed { get; set; }

    public long Records { get; set; }

    public static SimulationFigures operator +(SimulationFigures a, SimulationFigures b) => new()
    {
        Inputs = a.Inputs + b.Inputs,
        Misfortunes = a.Misfortunes + b.Misfortunes,
        Notes = a.Notes + b.Notes,
        Resumed = a.Resumed + b.Resumed,
        Records = a.Records + b.Records,
    };
}
