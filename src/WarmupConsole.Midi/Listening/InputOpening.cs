namespace WarmupConsole.Midi.Listening;

/// <summary>What came of opening an input: the input, or null, and a sentence for the director.</summary>
public sealed record InputOpening(IMidiInput? Input, string Sentence);
