namespace Evengrist.Ledger;

/// <summary>For each parcel the parcels made of it, as compressed rows: the way forward through a <see cref="ParentRows"/>.</summary>
/// <remarks>
/// Holds child numbers only; the shares stay where they are, in the rows of the child. 4 bytes an edge and 4 bytes a parcel.
/// The graph may go on growing or be cut back: the rows then hold for the parcels below <see cref="Covered"/>, and a
/// <see cref="Sweep"/> looks at the later ones one by one, so that its answer never depends on how far the rows have got.
/// Reading changes nothing; only <see cref="CatchUp"/> and <see cref="Rebuild"/> do, and no sweep may run meanwhile.
/// </remarks>
public sealed class ForwardRows
{
    private readonly ParentRows rows;
    private int[] first = [0];
    private int[] children = [];
    private int built;
    private long mark;

    /// <summary>Builds the rows for all parcels there are.</summary>
    /// <param name="rows">The graph, which may go on growing.</param>
    public ForwardRows(ParentRows rows)
    {
        this.rows = rows;
        Rebuild();
    }

    /// <summary>The rows know the children below this number, and no others.</summary>
    public int Covered => Math.Min(built, rows.KeptSince(mark));

    /// <summary>Memory held, in bytes.</summary>
    public long Bytes => sizeof(int) * ((long)first.Length + children.Length);

    /// <summary>Row starts: the children of parcel p, were none forgotten since, are numbers first[p] to first[p + 1].</summary>
    internal ReadOnlySpan<int> First => first;

    /// <summary>The parcels made of a parcel, ascending; those below <see cref="Covered"/> only.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such parcel.</exception>
    public ReadOnlySpan<int> ChildrenOf(int parcel)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(parcel);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(parcel, rows.Count);
        return Row(parcel, Covered);
    }

    /// <summary>Rebuilds the rows when so many edges came since that passing over them would cost more than it should.</summary>
    /// <returns>Whether they were rebuilt.</returns>
    public bool CatchUp()
    {
        var known = rows.First[Covered];
        if (rows.Edges - known <= Math.Max(4096, known / 16))
        {
            return false;
        }

        Rebuild();
        return true;
    }

    /// <summary>Builds the rows anew for all parcels there are.</summary>
    public void Rebuild()
    {
        built = rows.Count;
        mark = rows.Cuts;
        first = new int[built + 1];
        children = new int[rows.Edges];
        var starts = rows.First;
        var parents = rows.Parents;

        // first[p] counts the children of p, then says where its row ends, then, as the row is filled from behind, where it starts.
        foreach (var parent in parents)
        {
            first[parent]++;
        }

        var end = 0;
        for (var parcel = 0; parcel < built; parcel++)
        {
            first[parcel] = end += first[parcel];
        }

        first[built] = end;
        for (var child = built - 1; child >= 0; child--)
        {
            for (var edge = starts[child + 1] - 1; edge >= starts[child]; edge--)
            {
                children[--first[parents[edge]]] = child;
            }
        }
    }

    /// <summary>The children of a parcel below a limit that is not above <see cref="Covered"/>.</summary>
    internal ReadOnlySpan<int> Row(int parcel, int limit)
    {
        if (parcel >= limit)
        {
            return [];
        }

        var row = children.AsSpan(first[parcel], first[parcel + 1] - first[parcel]);
        while (row.Length > 0 && row[^1] >= limit)
        {
            row = row[..^1];
        }

        return row;
    }
}
