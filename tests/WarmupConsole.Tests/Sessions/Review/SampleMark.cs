namespace WarmupConsole.Tests.Sessions.Review;

/// <summary>A mark to be logged; what is left out was not said.</summary>
internal sealed record SampleMark(
    int Id,
    int Step,
    int Rung,
    string Raw,
    string[] Parts,
    string? Kind,
    string? Key = null,
    bool Named = false,
    int? Pitch = null,
    string Place = "",
    string Strength = "");
