namespace WarmupConsole.Sessions.Events;

/// <summary>The tonic chord of a rung was given, with a count-in behind it: at the start of a step, after a hold, when repeated.</summary>
public sealed record LeadInStarted(int Step, int Rung) : SessionEvent;
