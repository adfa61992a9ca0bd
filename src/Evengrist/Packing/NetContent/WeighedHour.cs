using NodaTime;

namespace Evengrist.Packing.NetContent;

/// <summary>All packages of one product that one line's checkweigher weighed within one hour of the day in universal time. Model: docs/model/net-content.md.</summary>
/// <param name="Line">Code of the packing line.</param>
/// <param name="Product">Code of the product.</param>
/// <param name="From">When the hour begins.</param>
/// <param name="Packages">The packages, by moment.</param>
public sealed record WeighedHour(string Line, string Product, Instant From, IReadOnlyList<WeighedPackage> Packages)
{
    /// <summary>The hour a moment lies in.</summary>
    public static Instant HourOf(Instant at) => Instant.FromUnixTimeSeconds((long)Math.Floor(at.ToUnixTimeSeconds() / 3600.0) * 3600);

    /// <summary>Packages that were not thrown out.</summary>
    public IReadOnlyList<WeighedPackage> Passed => [.. Packages.Where(p => !p.IsRejected)];

    /// <summary>
    /// Both together: a package that stands in both is the same one, and where several are alike the larger number of them stands. So the same file again, or one that overlaps it, adds only what is new.
    /// </summary>
    /// <param name="other">The same line, product and hour.</param>
    public WeighedHour With(WeighedHour other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if ((other.Line, other.Product, other.From) != (Line, Product, From))
        {
            throw new ArgumentException("Only the same line, product and hour is put together.", nameof(other));
        }

        var (mine, theirs, all) = (Packages.Order().ToArray(), other.Packages.Order().ToArray(), new List<WeighedPackage>());
        for (int i = 0, j = 0; i < mine.Length || j < theirs.Length;)
        {
            var order = i == mine.Length ? 1 : j == theirs.Length ? -1 : mine[i].CompareTo(theirs[j]);
            all.Add(order <= 0 ? mine[i] : theirs[j]);
            (i, j) = (order <= 0 ? i + 1 : i, order >= 0 ? j + 1 : j);
        }

        return this with { Packages = all };
    }

    /// <summary>So many of the packages that passed, evenly spread over the hour: a sample that nobody chose.</summary>
    /// <param name="size">How many, at most as many as passed.</param>
    public IReadOnlyList<WeighedPackage> Sample(int size)
    {
        var passed = Passed;
        ArgumentOutOfRangeException.ThrowIfNegative(size);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(size, passed.Count);
        return [.. Enumerable.Range(0, size).Select(i => passed[(int)(((2L * i) + 1) * passed.Count / (2L * size))])];
    }
}
