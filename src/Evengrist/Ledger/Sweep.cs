using System.Runtime.CompilerServices;

namespace Evengrist.Ledger;

/// <summary>Walks a parcel graph from given parcels back to all they were made of, or forward to all that was made of them.</summary>
/// <remarks>
/// <para>Exact: every parcel is taken up once, in the order of the numbers, when all that flows into its total is known. No path is
/// ever followed or dropped by itself. Equations and validity: docs/model/genealogy.md.</para>
/// <para>The answer lies in the sweep until its next call, and the spans it gave are void from then on. One sweep is for one
/// thread. It holds 8 bytes a parcel, once, and a call costs what it reaches, not the size of the graph.</para>
/// </remarks>
/// <param name="rows">The graph. It may grow or be cut back between calls.</param>
/// <param name="forward">Its forward rows; without them <see cref="Forward(int, double)"/> passes over every later parcel.</param>
public sealed class Sweep(ParentRows rows, ForwardRows? forward = null)
{
    private readonly ReachSet open = new();
    private double[] shares = [];
    private int[] reached = new int[1024];
    private int[] origins = new int[256];
    private int reachedCount;
    private int originCount;

    /// <summary>Parcels the last call reached, the starts among them: descending after Back, ascending after Forward.</summary>
    public ReadOnlySpan<int> Reached => reached.AsSpan(0, reachedCount);

    /// <summary>Those of <see cref="Reached"/> that have no parents, after Back; empty after Forward.</summary>
    public ReadOnlySpan<int> Origins => origins.AsSpan(0, originCount);

    /// <summary>Sum of the totals left out as too small; 0 when none was. After Back: origins and this sum to the starts.</summary>
    public double LeftOut { get; private set; }

    /// <summary>Memory held, in bytes.</summary>
    public long Bytes => open.Bytes + sizeof(double) * (long)shares.Length + sizeof(int) * ((long)reached.Length + origins.Length);

    /// <summary>The last answer for a parcel; 0 when it was not reached.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The number is negative.</exception>
    public double ShareOf(int parcel)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(parcel);
        return parcel < shares.Length ? shares[parcel] : 0;
    }

    /// <summary>What one parcel was made of.</summary>
    /// <inheritdoc cref="Back(ReadOnlySpan{int}, ReadOnlySpan{double}, double)"/>
    public ReadOnlySpan<int> Back(int parcel, double least = 0) => Back([parcel], [1.0], least);

    /// <summary>What given parcels, each weighing a given fraction, were made of.</summary>
    /// <remarks>f(p) = start of p + Σ over its children c of w(p, c) · f(c). Origins sum to the starts.</remarks>
    /// <param name="parcels">Where to start; a parcel given twice counts twice.</param>
    /// <param name="fractions">Weight of each start, as many as <paramref name="parcels"/>, not negative; any common unit.</param>
    /// <param name="least">Parcels whose total lies below are left out altogether; 0, the default, leaves out none.</param>
    /// <returns>The parcels reached, descending; each total by <see cref="ShareOf"/>.</returns>
    /// <exception cref="ArgumentException">Lengths differ, no such parcel, or a fraction is negative or no number.</exception>
    public ReadOnlySpan<int> Back(scoped ReadOnlySpan<int> parcels, scoped ReadOnlySpan<double> fractions, double least = 0)
    {
        Begin(parcels, fractions, double.MaxValue, least);
        var starts = rows.First;
        var parents = rows.Parents;
        var weights = rows.Shares;
        var totals = shares.AsSpan();
        for (var parcel = open.Highest(); parcel >= 0; parcel = open.Below(parcel))
        {
            var total = totals[parcel];
            if (!Keep(parcel, total, least))
            {
                continue;
            }

            var start = starts[parcel];
            var end = starts[parcel + 1];
            if (start == end)
            {
                Append(ref origins, ref originCount, parcel);
            }

            var made = parents[start..end];
            var of = weights[start..end];
            for (var i = 0; i < made.Length; i++)
            {
                totals[made[i]] += of[i] * total;
            }

            open.AddAll(made);
        }

        return Reached;
    }

    /// <summary>How much of each later parcel stems from one parcel.</summary>
    /// <inheritdoc cref="Forward(ReadOnlySpan{int}, ReadOnlySpan{double}, double)"/>
    public ReadOnlySpan<int> Forward(int parcel, double least = 0) => Forward([parcel], [1.0], least);

    /// <summary>How much of each later parcel stems from given parcels, of each of which a given fraction counts.</summary>
    /// <remarks>
    /// g(c) = Σ over its parents p of w(p, c) · g(p). A start of fraction φ that itself stems from other starts has
    /// g = φ + (1 − φ) · Σ w · g, so that nothing counts twice and no total exceeds one.
    /// </remarks>
    /// <param name="parcels">Where to start; a parcel given twice counts with both fractions, at most whole.</param>
    /// <param name="fractions">Fraction of each start that counts, 0 to 1, as many as <paramref name="parcels"/>.</param>
    /// <param name="least">Parcels whose total lies below are left out altogether; 0, the default, leaves out none.</param>
    /// <returns>The parcels reached, ascending; each fraction by <see cref="ShareOf"/>.</returns>
    /// <exception cref="ArgumentException">Lengths differ, no such parcel, or a fraction lies outside 0 to 1.</exception>
    public ReadOnlySpan<int> Forward(scoped ReadOnlySpan<int> parcels, scoped ReadOnlySpan<double> fractions, double least = 0)
    {
        Begin(parcels, fractions, 1, least);
        var starts = rows.First;
        var parents = rows.Parents;
        var weights = rows.Shares;
        var totals = shares.AsSpan();
        var ahead = forward is null ? [] : forward.First;
        var covered = forward?.Covered ?? 0;
        var parcel = open.Lowest();
        for (; parcel >= 0 && parcel < covered; parcel = open.Above(parcel))
        {
            // Most of what is reached is packed lots, of which nothing is made.
            if (Keep(parcel, Pull(parcel, starts, parents, weights, totals), least) && ahead[parcel] < ahead[parcel + 1])
            {
                open.AddAll(forward!.Row(parcel, covered));
            }
        }

        // Parcels the rows do not know yet are asked one by one: from the first such when one below was reached, else from the
        // first start among them.
        if (parcel >= 0 || reachedCount > 0)
        {
            for (var late = reachedCount > 0 ? covered : parcel; late < starts.Length - 1; late++)
            {
                Keep(late, Pull(late, starts, parents, weights, totals), least);
            }
        }

        while (parcel >= 0)
        {
            parcel = open.Above(parcel);
        }

        return Reached;
    }

    // The spans come from the caller: fetched here they would cost as much as the sum.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static double Pull(
        int parcel, ReadOnlySpan<int> starts, ReadOnlySpan<int> parents, ReadOnlySpan<double> weights, Span<double> totals)
    {
        var sum = 0.0;
        var end = starts[parcel + 1];
        for (var edge = starts[parcel]; edge < end; edge++)
        {
            sum += weights[edge] * totals[parents[edge]];
        }

        var own = Math.Min(1, totals[parcel]);
        return totals[parcel] = own + (1 - own) * sum;
    }

    private bool Keep(int parcel, double total, double least)
    {
        if (total > 0 && total >= least)
        {
            Append(ref reached, ref reachedCount, parcel);
            return true;
        }

        LeftOut += total;
        shares[parcel] = 0;
        return false;
    }

    private void Begin(ReadOnlySpan<int> parcels, ReadOnlySpan<double> fractions, double most, double least)
    {
        Starts.Check(rows, parcels, fractions, most, least);
        foreach (var parcel in Reached)
        {
            shares[parcel] = 0;
        }

        (reachedCount, originCount, LeftOut) = (0, 0, 0);
        if (shares.Length < rows.Count)
        {
            Array.Resize(ref shares, rows.Count + rows.Count / 8);
        }

        open.Grow(rows.Count);
        for (var i = 0; i < parcels.Length; i++)
        {
            shares[parcels[i]] += fractions[i];
            open.Add(parcels[i]);
        }
    }

    private static void Append(ref int[] list, ref int count, int parcel)
    {
        if (count == list.Length)
        {
            Array.Resize(ref list, 2 * count);
        }

        list[count++] = parcel;
    }
}
