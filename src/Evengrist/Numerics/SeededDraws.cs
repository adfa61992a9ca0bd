namespace Evengrist.Numerics;

/// <summary>A small seeded generator: a counter put through two rounds of xor and multiply; normals by the polar form of Box and Muller.</summary>
/// <remarks>Each draw has its own start, made from the seed and its number, so that it does not matter which core draws it or when. The mixing step is the one known as SplitMix64 [memory]; its uniforms and normals are tested against their distributions.</remarks>
internal sealed class SeededDraws
{
    private ulong state;
    private double spare = double.NaN;

    public SeededDraws(long seed, int number)
    {
        state = Mix(unchecked((ulong)seed));
        state = Mix(unchecked(state + ((ulong)number * 0xD1342543DE82EF95UL)));
    }

    /// <summary>Evenly between 0 and 1, neither included.</summary>
    public double Uniform()
    {
        unchecked
        {
            state += 0x9E3779B97F4A7C15UL;
        }

        return ((Mix(state) >> 11) + 0.5) * (1.0 / (1UL << 53));
    }

    /// <summary>Normal with mean 0 and standard deviation 1.</summary>
    public double Normal()
    {
        if (!double.IsNaN(spare))
        {
            var kept = spare;
            spare = double.NaN;
            return kept;
        }

        while (true)
        {
            var (x, y) = ((2 * Uniform()) - 1, (2 * Uniform()) - 1);
            var square = (x * x) + (y * y);
            if (square is > 0 and < 1)
            {
                var stretch = Math.Sqrt(-2 * Math.Log(square) / square);
                spare = y * stretch;
                return x * stretch;
            }
        }
    }

    private static ulong Mix(ulong z)
    {
        unchecked
        {
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }
}
