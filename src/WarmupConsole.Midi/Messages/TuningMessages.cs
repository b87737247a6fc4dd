using WarmupConsole.Music.Pitches;

namespace WarmupConsole.Midi.Messages;

/// <summary>
/// Tells a device where A4 lies, by the registered parameters "coarse tuning" (2) and "fine tuning" (1) of MIDI 1.0; from memory, checked
/// against FluidSynth. Devices that do not know them stay where they are.
/// </summary>
public static class TuningMessages
{
    private const int ParameterHigh = 101;
    private const int ParameterLow = 100;
    private const int DataHigh = 6;
    private const int DataLow = 38;
    private const int Coarse = 2;
    private const int Fine = 1;
    private const int None = 127;
    private const int Middle = 64;

    /// <summary>Nothing for 440 Hz: devices begin there.</summary>
    public static IReadOnlyList<MidiMessage> For(Tuning tuning)
    {
        double semitones = 12 * Math.Log2(tuning.A4Hertz / Tuning.Iso16.A4Hertz);
        int whole = (int)Math.Round(semitones);
        int fine = (Middle * 128) + (int)Math.Round((semitones - whole) * Middle * 128);
        return tuning == Tuning.Iso16 ? [] :
        [
            .. Chosen(Coarse), Control(DataHigh, Middle + whole), Control(DataLow, 0),
            .. Chosen(Fine), Control(DataHigh, fine / 128), Control(DataLow, fine % 128),
            Control(ParameterHigh, None), Control(ParameterLow, None),
        ];
    }

    private static MidiMessage[] Chosen(int parameter) => [Control(ParameterHigh, 0), Control(ParameterLow, parameter)];

    private static MidiMessage Control(int controller, int value) => MidiMessage.Control(MidiConstants.PianoChannel, controller, value);
}
