using System.Numerics;

namespace WarmupConsole.Midi.Synthesis;

/// <summary>
/// One struck string: sixteen partials, each a point that turns round a circle and comes nearer to its middle. Partials above the band
/// are left out, so that none is heard at a wrong pitch. The figures are chosen by ear (no published instrument).
/// </summary>
internal sealed class StringVoice
{
    private const int Partials = 16;
    private const float Forgotten = 1e-4f;
    private const double Inharmonicity = 1.5e-4;
    private const double StruckAt = 0.121; // of the string's length: just short of an eighth
    private const double HighestOfBand = 0.45;
    private const double AttackSeconds = 0.004;
    private const double ReleaseSeconds = 0.07;

    private readonly float[] _cosine = new float[Partials];
    private readonly float[] _sine = new float[Partials];
    private readonly float[] _real = new float[Partials];
    private readonly float[] _imaginary = new float[Partials];
    private float _level;
    private float _levelPerSample;
    private float _gate;
    private float _gateStep;

    /// <summary>False when it may begin another note.</summary>
    internal bool Sounds { get; private set; }

    /// <summary>The key that holds it, or −1 once it was let go.</summary>
    internal int Key { get; private set; } = -1;

    internal void Strike(int key, double hertz, int velocity, int sampleRate)
    {
        double seconds = 4.5 * Math.Pow(2, (48 - key) / 26.0);
        double hardness = 0.30 + (0.40 * (1 - (velocity / 127.0)));
        double total = 0;
        for (int i = 0; i < Partials; i++)
        {
            total += Tune(i, hertz, hardness, seconds, sampleRate);
        }

        float loudness = (float)(0.30 * Math.Pow(velocity / 127.0, 1.5) / total);
        for (int i = 0; i < Partials; i++)
        {
            _real[i] *= loudness;
        }

        (_level, _levelPerSample) = (1, (float)Math.Exp(-1 / (seconds * sampleRate)));
        (_gate, _gateStep) = (0, (float)(1 / (AttackSeconds * sampleRate)));
        (Sounds, Key) = (true, key);
    }

    /// <summary>The damper falls.</summary>
    internal void Release(int sampleRate)
    {
        Key = -1;
        _gateStep = (float)(-1 / (ReleaseSeconds * sampleRate));
    }

    internal void Stop() => (Sounds, Key) = (false, -1);

    /// <summary>Adds its samples to those that are there.</summary>
    internal void AddTo(Span<float> samples)
    {
        for (int at = 0; at < samples.Length && Sounds; at++)
        {
            samples[at] += Next() * _gate;
            _gate = Math.Clamp(_gate + _gateStep, 0, 1);
            _level *= _levelPerSample;
            if (_level < Forgotten || (_gate == 0 && _gateStep < 0))
            {
                Stop();
            }
        }
    }

    private float Next()
    {
        Vector<float> sum = Vector<float>.Zero;
        for (int i = 0; i < Partials; i += Vector<float>.Count)
        {
            Vector<float> real = new(_real, i);
            Vector<float> imaginary = new(_imaginary, i);
            Vector<float> cosine = new(_cosine, i);
            Vector<float> sine = new(_sine, i);
            sum += imaginary;
            ((real * cosine) - (imaginary * sine)).CopyTo(_real, i);
            ((real * sine) + (imaginary * cosine)).CopyTo(_imaginary, i);
        }

        return Vector.Sum(sum);
    }

    /// <summary>Partials lie a little wide of the multiples, as a stiff string's do; the first lies exactly on the pitch. Higher ones die sooner.</summary>
    private double Tune(int i, double hertz, double hardness, double seconds, int sampleRate)
    {
        int number = i + 1;
        double frequency = number * hertz * Math.Sqrt((1 + (Inharmonicity * number * number)) / (1 + Inharmonicity));
        double strength = frequency < HighestOfBand * sampleRate
            ? Math.Abs(Math.Sin(Math.PI * number * StruckAt)) * Math.Exp(-hardness * i) / number
            : 0;
        double turn = 2 * Math.PI * frequency / sampleRate;
        double shrink = Math.Exp(-(1 + (0.6 * i)) / (seconds * sampleRate));
        _cosine[i] = (float)(shrink * Math.Cos(turn));
        _sine[i] = (float)(shrink * Math.Sin(turn));
        (_real[i], _imaginary[i]) = ((float)strength, 0);
        return strength;
    }
}
