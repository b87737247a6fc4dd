using CsCheck;
using WarmupConsole.Tui.Presentation;

namespace WarmupConsole.Tests.Tui;

public class BoardScaleTests
{
    private static readonly Gen<BoardScale> Scales =
        Gen.Select(Gen.Int[20, 60], Gen.Int[1, 60], Gen.Int[1, 80]).Select((low, span, rows) => new BoardScale(low, low + span, rows));

    [Fact]
    public void Every_pitch_of_the_board_has_its_row() => Scales.Sample(scale =>
        Enumerable.Range(scale.LowestMidi, scale.HighestMidi - scale.LowestMidi + 1)
            .All(midi => scale.Low(scale.RowOf(midi)) <= midi && midi <= scale.High(scale.RowOf(midi))));

    [Fact]
    public void A_higher_pitch_never_stands_lower() => Scales.Sample(scale =>
        Enumerable.Range(scale.LowestMidi, scale.HighestMidi - scale.LowestMidi).All(midi => scale.RowOf(midi + 1) <= scale.RowOf(midi)));

    [Fact]
    public void Pitches_beyond_the_board_stay_on_it() => Scales.Sample(scale => scale.RowOf(0) == scale.Rows - 1 && scale.RowOf(127) == 0);
}
