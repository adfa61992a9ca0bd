namespace Evengrist.Bench.Genealogy.Graph;

/// <summary>Counter-based splitmix64: the same numbers in any language and in any order of asking.</summary>
internal readonly struct CounterRandom(ulong seed)
{
    /// <summary>The n-th number of stream k, 0 ≤ U &lt; 1.</summary>
    public double U(int k, long n)
    {
        unchecked
        {
            var z = seed + (ulong)k * 0xD1B54A32D192ED03UL + ((ulong)n + 1) * 0x9E3779B97F4A7C15UL;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            z ^= z >> 31;
            return (z >> 11) * (1.0 / (1UL << 53));
        }
    }
}
