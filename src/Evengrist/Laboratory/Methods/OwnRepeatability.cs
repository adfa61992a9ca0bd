namespace Evengrist.Laboratory.Methods;

/// <summary>Repeatability as a laboratory's own duplicates show it: s_r² = Σ(x − x̄)² / Σ(n − 1) over all groups of results made alike, r = 2.8·s_r [ISO 5725-2, from memory].</summary>
/// <param name="Groups">Groups of two or more.</param>
/// <param name="Freedom">Degrees of freedom: results less groups; for pairs, how many pairs.</param>
/// <param name="StandardDeviation">s_r, unit of the method.</param>
/// <param name="Mean">Mean of the groups' means, unit of the method.</param>
public sealed record OwnRepeatability(int Groups, int Freedom, double StandardDeviation, double Mean)
{
    /// <summary>From so many degrees of freedom on it is more than a hint [ours].</summary>
    public const int Enough = 15;

    /// <summary>r, unit of the method.</summary>
    public double Limit => (double)PrecisionLimit.Factor * StandardDeviation;

    /// <summary>Pools the groups; null where none has two results. A group that the method's r would reject counts too: leaving it out would flatter.</summary>
    /// <param name="groups">Results made alike, one list for each sample; unit and basis of the method.</param>
    public static OwnRepeatability? Of(IEnumerable<IReadOnlyList<decimal>> groups)
    {
        ArgumentNullException.ThrowIfNull(groups);
        IReadOnlyList<decimal>[] alike = [.. groups.Where(g => g.Count > 1)];
        if (alike.Length == 0)
        {
            return null;
        }

        var (squares, freedom) = (0m, 0);
        foreach (var group in alike)
        {
            var mean = group.Average();
            (squares, freedom) = (squares + group.Sum(v => (v - mean) * (v - mean)), freedom + group.Count - 1);
        }

        return new OwnRepeatability(alike.Length, freedom, Math.Sqrt((double)squares / freedom), (double)alike.Average(g => g.Average()));
    }
}
