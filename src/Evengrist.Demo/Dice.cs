namespace Evengrist.Demo;

/// <summary>A seeded source of chance: the n-th number of a stream is a fixed function of seed, stream name and n, on every machine.</summary>
/// <remarks>Counter through the finisher of splitmix64 (public domain). Each part of the story draws from a stream of its own, so that a change to one leaves the others as they were.</remarks>
internal sealed class Dice
{
    private const ulong Step = 0x9E3779B97F4A7C15UL;
    private readonly ulong start;
    private ulong counter;

    public Dice(ulong seed, string stream)
    {
        var hash = 0xCBF29CE484222325UL;
        unchecked
        {
            foreach (var letter in stream)
            {
                hash = (hash ^ letter) * 0x100000001B3UL;
            }

            start = Mix(seed + Step) ^ hash;
        }
    }

    /// <summary>From 0 up to, not including, 1.</summary>
    public double Even() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>From least to most, both included.</summary>
    public int Whole(int least, int most) => least + (int)(Even() * (most - least + 1));

    public bool Chance(double share) => Even() < share;

    public T Of<T>(IReadOnlyList<T> list) => list[(int)(Even() * list.Count)];

    /// <summary>One normal draw (the sum of twelve even ones less six: no logarithm, so the same bits everywhere), within ±6 SD.</summary>
    public double Normal(double mean, double sd)
    {
        var sum = -6.0;
        for (var i = 0; i < 12; i++)
        {
            sum += Even();
        }

        return mean + (sd * sum);
    }

    /// <summary>A normal draw held within bounds.</summary>
    public double Normal(double mean, double sd, double least, double most) => Math.Clamp(Normal(mean, sd), least, most);

    private ulong Next() => unchecked(Mix(start + (++counter * Step)));

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
