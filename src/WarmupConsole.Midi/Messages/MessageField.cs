namespace WarmupConsole.Midi.Messages;

/// <summary>A data byte: what it means and its lowest value.</summary>
internal sealed record MessageField(string Name, int Lowest)
{
    internal bool Allows(int value) => value >= Lowest && value <= MessageTable.HighestDataByte;
}
