namespace Evengrist.Ledger;

/// <summary>For each parcel the parcels it was made of and their shares, as compressed rows that only grow, or are cut back.</summary>
/// <remarks>
/// A parent always has a lower number than its child, so ascending numbers are a topological order. Shares are fractions of the
/// child's mass; those of one child sum to one. 12 bytes an edge and 4 bytes a parcel, plus up to a fifth of room to grow.
/// Equations: docs/model/genealogy.md.
/// </remarks>
public sealed class ParentRows
{
    private readonly Stack<(long Cut, int Kept)> cuts = new();
    private int[] first = new int[1025];
    private int[] parents = new int[4096];
    private double[] shares = new double[4096];

    /// <summary>Number of parcels; the next one added has this number.</summary>
    public int Count { get; private set; }

    /// <summary>Number of edges.</summary>
    public int Edges => first[Count];

    /// <summary>How often parcels were forgotten; a mark to ask <see cref="KeptSince"/> with.</summary>
    public long Cuts { get; private set; }

    /// <summary>Memory held, in bytes, room to grow included.</summary>
    public long Bytes => sizeof(int) * ((long)first.Length + parents.Length) + sizeof(double) * (long)shares.Length;

    /// <summary>Row starts: the edges into parcel p are first[p] to first[p + 1].</summary>
    internal ReadOnlySpan<int> First => first.AsSpan(0, Count + 1);

    /// <summary>Parents of all edges, child by child.</summary>
    internal ReadOnlySpan<int> Parents => parents.AsSpan(0, Edges);

    /// <summary>Shares of all edges, child by child.</summary>
    internal ReadOnlySpan<double> Shares => shares.AsSpan(0, Edges);

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

        foreach (var parent in made)
        {
            if (parent < 0 || parent >= Count)
            {
                throw new ArgumentException($"Parcel {parent} is not made yet; {Count} parcels are.", nameof(made));
            }
        }

        var start = first[Count];
        if (start + made.Length > parents.Length)
        {
            var size = Roomier(parents.Length, start + made.Length);
            Array.Resize(ref parents, size);
            Array.Resize(ref shares, size);
        }

        if (Count + 2 > first.Length)
        {
            Array.Resize(ref first, Roomier(first.Length, Count + 2));
        }

        made.CopyTo(parents.AsSpan(start));
        of.CopyTo(shares.AsSpan(start));
        first[Count + 1] = start + made.Length;
        return Count++;
    }

    /// <summary>Makes room for so many parcels and edges in one go.</summary>
    internal void MakeRoomFor(int parcels, int edges)
    {
        if (edges > parents.Length)
        {
            Array.Resize(ref parents, edges);
            Array.Resize(ref shares, edges);
        }

        if (parcels + 1 > first.Length)
        {
            Array.Resize(ref first, parcels + 1);
        }
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
        if (count == Count)
        {
            return;
        }

        // Only the least count after each mark can ever be asked for, so earlier cuts that kept as much or more are dropped.
        while (cuts.TryPeek(out var last) && last.Kept >= count)
        {
            cuts.Pop();
        }

        cuts.Push((++Cuts, count));
        Count = count;
    }

    /// <summary>How many of the parcels known at a mark are still the same parcels, at most.</summary>
    /// <param name="mark">Value of <see cref="Cuts"/> at an earlier moment.</param>
    /// <returns>Least count cut back to since; <see cref="int.MaxValue"/> when nothing was forgotten since.</returns>
    public int KeptSince(long mark)
    {
        var kept = int.MaxValue;
        foreach (var (cut, count) in cuts)
        {
            if (cut <= mark)
            {
                break;
            }

            kept = count;
        }

        return kept;
    }

    /// <summary>Gives back the room to grow; worth it once a long rebuild is done.</summary>
    public void Trim()
    {
        Array.Resize(ref parents, Edges);
        Array.Resize(ref shares, Edges);
        Array.Resize(ref first, Count + 1);
    }

    // Half as much again while small; a fifth once large, where room to grow costs more than the copying.
    private static int Roomier(int size, int needed) => Math.Max(needed, size + size / (size < 1 << 20 ? 2 : 5) + 16);
}
