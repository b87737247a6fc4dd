using System.Numerics;

namespace WarmupConsole.Tests.Midi.Synthesis;

/// <summary>The pitch of a partial, by a Fourier transform.</summary>
internal static class Spectrum
{
    /// <summary>The hertz of the strongest line within a semitone of what is looked for: a Hann window, and a parabola through the logarithms round the peak.</summary>
    /// <param name="samples">A power of two of them.</param>
    /// <param name="sampleRate">A second.</param>
    /// <param name="near">In hertz.</param>
    internal static double Peak(ReadOnlySpan<float> samples, int sampleRate, double near)
    {
        Complex[] line = new Complex[samples.Length];
        for (int i = 0; i < line.Length; i++)
        {
            line[i] = samples[i] * 0.5 * (1 - Math.Cos(2 * Math.PI * i / line.Length));
        }

        Transform(line);
        int low = (int)(near / 1.06 * samples.Length / sampleRate);
        int high = (int)(near * 1.06 * samples.Length / sampleRate);
        int top = Enumerable.Range(low, high - low + 1).MaxBy(i => line[i].Magnitude);
        (double a, double b, double c) = (Math.Log(line[top - 1].Magnitude), Math.Log(line[top].Magnitude), Math.Log(line[top + 1].Magnitude));
        return (top + (0.5 * (a - c) / (a - (2 * b) + c))) * sampleRate / samples.Length;
    }

    internal static double Cents(double hertz, double wanted) => 1200 * Math.Log2(hertz / wanted);

    private static void Transform(Span<Complex> line)
    {
        if (line.Length == 1)
        {
            return;
        }

        int half = line.Length / 2;
        Complex[] even = new Complex[half];
        Complex[] odd = new Complex[half];
        for (int i = 0; i < half; i++)
        {
            (even[i], odd[i]) = (line[2 * i], line[(2 * i) + 1]);
        }

        Transform(even);
        Transform(odd);
        for (int i = 0; i < half; i++)
        {
            Complex turned = Complex.FromPolarCoordinates(1, -2 * Math.PI * i / line.Length) * odd[i];
            (line[i], line[i + half]) = (even[i] + turned, even[i] - turned);
        }
    }
}
