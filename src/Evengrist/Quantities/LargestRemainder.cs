namespace Evengrist.Quantities;

/// <summary>Splits a whole number by weights so that the parts sum to it exactly.</summary>
/// <remarks>Each exact share is cut down; the units left over go one each to the largest remainders, ties by order.</remarks>
internal static class LargestRemainder
{
    public static long[] Split(long total, IReadOnlyList<double> weights)
    {
        double sum = 0;
        foreach (var weight in weights)
        {
            if (!double.IsFinite(weight) || weight < 0)
            {
                throw new ArgumentException($"A weight must be a finite number of at least 0; got {weight}.", nameof(weights));
            }

            sum += weight;
        }

        if (!(sum > 0))
        {
            throw new ArgumentException("At least one weight must be above 0.", nameof(weights));
        }

        var parts = new long[weights.Count];
        var remainders = new double[weights.Count];
        long given = 0;
        for (var i = 0; i < parts.Length; i++)
        {
            var exact = total * (weights[i] / sum);
            parts[i] = Math.Min((long)Math.Floor(exact), total - given);
            remainders[i] = exact - parts[i];
            given += parts[i];
        }

        foreach (var i in Enumerable.Range(0, parts.Length).OrderByDescending(i => remainders[i]).ThenBy(i => i))
        {
            if (given == total)
            {
                break;
            }

            parts[i]++;
            given++;
        }

        // Beyond 2^53 g a double no longer counts grams: what is still left goes to the largest weight.
        parts[Largest(weights)] += total - given;
        return parts;
    }

    private static int Largest(IReadOnlyList<double> weights)
    {
        var largest = 0;
        for (var i = 1; i < weights.Count; i++)
        {
            if (weights[i] > weights[largest])
            {
                largest = i;
            }
        }

        return largest;
    }
}
