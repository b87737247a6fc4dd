namespace WarmupConsole.Sessions.Findings;

/// <summary>A mark that a finding rests on.</summary>
/// <param name="Session">Name of the log.</param>
/// <param name="Mark">Number of the mark in it.</param>
/// <param name="Raw">What was typed.</param>
/// <param name="Blamed">How much of it is put down to the pitch, 0–1.</param>
public readonly record struct Evidence(string Session, int Mark, string Raw, double Blamed);
