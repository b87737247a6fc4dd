using System.Runtime.InteropServices;
using System.Text;

namespace WarmupConsole.Midi.Sound;

/// <summary>The functions of the FluidSynth library that are used. By their names, since the library's own name differs from system to system.</summary>
internal sealed unsafe class FluidSynthCalls(nint library)
{
    private const int Ok = 1;

    private readonly delegate* unmanaged[Cdecl]<nint> _newSettings = (delegate* unmanaged[Cdecl]<nint>)NativeLibrary.GetExport(library, "new_fluid_settings");
    private readonly delegate* unmanaged[Cdecl]<nint, void> _deleteSettings = (delegate* unmanaged[Cdecl]<nint, void>)NativeLibrary.GetExport(library, "delete_fluid_settings");
    private readonly delegate* unmanaged[Cdecl]<nint, byte*, double, int> _setNumber = (delegate* unmanaged[Cdecl]<nint, byte*, double, int>)NativeLibrary.GetExport(library, "fluid_settings_setnum");
    private readonly delegate* unmanaged[Cdecl]<nint, nint> _newSynth = (delegate* unmanaged[Cdecl]<nint, nint>)NativeLibrary.GetExport(library, "new_fluid_synth");
    private readonly delegate* unmanaged[Cdecl]<nint, void> _deleteSynth = (delegate* unmanaged[Cdecl]<nint, void>)NativeLibrary.GetExport(library, "delete_fluid_synth");
    private readonly delegate* unmanaged[Cdecl]<nint, byte*, int, int> _load = (delegate* unmanaged[Cdecl]<nint, byte*, int, int>)NativeLibrary.GetExport(library, "fluid_synth_sfload");
    private readonly delegate* unmanaged[Cdecl]<nint, int, int, int, int> _noteOn = (delegate* unmanaged[Cdecl]<nint, int, int, int, int>)NativeLibrary.GetExport(library, "fluid_synth_noteon");
    private readonly delegate* unmanaged[Cdecl]<nint, int, int, int> _noteOff = (delegate* unmanaged[Cdecl]<nint, int, int, int>)NativeLibrary.GetExport(library, "fluid_synth_noteoff");
    private readonly delegate* unmanaged[Cdecl]<nint, int, int, int, int> _control = (delegate* unmanaged[Cdecl]<nint, int, int, int, int>)NativeLibrary.GetExport(library, "fluid_synth_cc");
    private readonly delegate* unmanaged[Cdecl]<nint, int, int, int> _program = (delegate* unmanaged[Cdecl]<nint, int, int, int>)NativeLibrary.GetExport(library, "fluid_synth_program_change");
    private readonly delegate* unmanaged[Cdecl]<nint, int, int, byte*, double*, int, int> _keyTuning = (delegate* unmanaged[Cdecl]<nint, int, int, byte*, double*, int, int>)NativeLibrary.GetExport(library, "fluid_synth_activate_key_tuning");
    private readonly delegate* unmanaged[Cdecl]<nint, int, int, int, int, int> _useTuning = (delegate* unmanaged[Cdecl]<nint, int, int, int, int, int>)NativeLibrary.GetExport(library, "fluid_synth_activate_tuning");
    private readonly delegate* unmanaged[Cdecl]<nint, int, float*, int, int, float*, int, int, int> _write = (delegate* unmanaged[Cdecl]<nint, int, float*, int, int, float*, int, int, int>)NativeLibrary.GetExport(library, "fluid_synth_write_float");

    internal nint NewSettings() => _newSettings();

    internal void DeleteSettings(nint settings) => _deleteSettings(settings);

    internal void SetNumber(nint settings, string name, double value)
    {
        fixed (byte* bytes = Text(name))
        {
            _ = _setNumber(settings, bytes, value);
        }
    }

    internal nint NewSynth(nint settings) => _newSynth(settings);

    internal void DeleteSynth(nint synth) => _deleteSynth(synth);

    internal int LoadFont(nint synth, string path)
    {
        fixed (byte* bytes = Text(path))
        {
            return _load(synth, bytes, Ok);
        }
    }

    internal void NoteOn(nint synth, int channel, int key, int velocity) => _ = _noteOn(synth, channel, key, velocity);

    internal void NoteOff(nint synth, int channel, int key) => _ = _noteOff(synth, channel, key);

    internal void Control(nint synth, int channel, int controller, int value) => _ = _control(synth, channel, controller, value);

    internal void Program(nint synth, int channel, int program) => _ = _program(synth, channel, program);

    /// <summary>The pitch of each key, in cents.</summary>
    internal void Tune(nint synth, int channel, double[] cents)
    {
        fixed (byte* name = Text("a4"))
        {
            fixed (double* pitches = cents)
            {
                _ = _keyTuning(synth, 0, 0, name, pitches, Ok);
                _ = _useTuning(synth, channel, 0, 0, Ok);
            }
        }
    }

    internal void Write(nint synth, Span<float> left, float[] right)
    {
        fixed (float* one = left, other = right)
        {
            _ = _write(synth, left.Length, one, 0, 1, other, 0, 1);
        }
    }

    private static byte[] Text(string text) => Encoding.UTF8.GetBytes(text + '\0');
}
