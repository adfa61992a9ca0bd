namespace Evengrist.Ledger;

/// <summary>For each parcel the parcels it was made of and their shares, as compressed rows that only grow, or are cut back.</summary>
/// <remarks>
/// A parent always has a lower number than its child, so ascending numbers are a topological order. Shares are fractions of the
/// child's mass; those of one child sum to one. About 12 bytes an edge and 4 bytes a parcel.
/// </remarks>
public sealed class ParentRows
{
    private int[] first = new int[1025];
    private int[] parents = new int[4096];
    private double[] shares = new double[4096];

    /// <summary>Number of parcels; the next one added has this number.</summary>
    public int Count { get; private set; }

    /// <summary>Number of edges.</summary>
    public int Edges => first[Count];

    /// <summary>Adds a parcel and returns its number.</summary>
    /// <param name="made">Numbers of its parents, all below <see cref="Count"/>; empty for an origin.</param>
    /// <param name="of">Share of each parent in the parcel, as many as <paramref name="made"/>.</param>
    /// <exception cref="ArgumentException">The two differ in length or a parent is not a parcel yet.</exception>
    public int Add(ReadOnlySpan<int> made, ReadOnlySpan<double> of)
    {
        if (made.Length != of.Length)
        {
            throw new ArgumentException($"{made.Length} parents with {of.Length} shares.", nameof(of));
        }

        var start = first[Count];
        if (start + made.Length > parents.Length)
        {
            var size = Math.Max(start + made.Length, parents.Length + parents.Length / 2);
            Array.Resize(ref parents, size);
            Array.Resize(ref shares, size);
        }

        for (var i = 0; i < made.Length; i++)
        {
            if ((uint)made[i] >= (uint)Count)
            {
                throw new ArgumentException($"Parcel {made[i]} is not made yet; {Count} parcels are.", nameof(made));
            }

            parents[start + i] = made[i];
            shares[start + i] = of[i];
        }

        if (Count + 2 > first.Length)
        {
            Array.Resize(ref first, first.Length + first.Length / 2);
        }

        first[Count + 1] = start + made.Length;
        return Count++;
    }

    /// <summary>Numbers of the parents of a parcel.</summary>
    public ReadOnlySpan<int> ParentsOf(int parcel) => parents.AsSpan(first[parcel], first[parcel + 1] - first[parcel]);

    /// <summary>Shares of the parents in a parcel, in the order of <see cref="ParentsOf"/>.</summary>
    public ReadOnlySpan<double> SharesOf(int parcel) => shares.AsSpan(first[parcel], first[parcel + 1] - first[parcel]);

    /// <summary>Forgets every parcel from a number on.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number lies outside 0 to <see cref="Count"/>.</exception>
    public void CutBackTo(int count)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Count);
        Count = count;
    }
}
