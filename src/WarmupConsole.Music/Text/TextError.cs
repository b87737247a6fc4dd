namespace WarmupConsole.Music.Text;

/// <summary>Something wrong in a text that a director wrote.</summary>
/// <param name="Offset">Characters from the start of the text to the fault.</param>
/// <param name="Length">Characters at fault; 0 where something is missing.</param>
/// <param name="Message">What is wrong, what is allowed, what to do.</param>
public readonly record struct TextError(int Offset, int Length, string Message);
