using CsCheck;
using Evengrist.Ledger;

namespace Evengrist.Tests.Ledger;

/// <summary>Small parcel graphs for the sweep's tests.</summary>
internal static class SweepGraphs
{
    /// <summary>One parcel as generated: rough parents (taken modulo the parcels before it) and rough shares.</summary>
    public static readonly Gen<(int Parent, double Weight)[][]> Rough =
        Gen.Select(Gen.Int[0, 1_000_000], Gen.Double[0.01, 1]).Array[0, 4].Array[1, 120];

    public static ParentRows Of(IEnumerable<(int Parent, double Weight)[]> rough, bool reversed = false)
    {
        var rows = new ParentRows();
        foreach (var parcel in rough)
        {
            Grow(rows, parcel, reversed);
        }

        return rows;
    }

    public static int Grow(ParentRows rows, (int Parent, double Weight)[] rough, bool reversed = false)
    {
        if (rows.Count == 0)
        {
            return rows.Add([], []);
        }

        var sum = rough.Sum(edge => edge.Weight);
        var edges = rough.Select(edge => (Parent: edge.Parent % rows.Count, Share: edge.Weight / sum));
        var ordered = reversed ? edges.Reverse().ToArray() : edges.ToArray();
        return rows.Add(ordered.Select(edge => edge.Parent).ToArray(), ordered.Select(edge => edge.Share).ToArray());
    }

    /// <summary>The same question answered by the definition alone: every path by itself, no order, no index.</summary>
    public static double ShareByPaths(ParentRows rows, int ancestor, int parcel)
    {
        if (parcel <= ancestor)
        {
            return parcel == ancestor ? 1 : 0;
        }

        var sum = 0.0;
        for (var i = 0; i < rows.ParentsOf(parcel).Length; i++)
        {
            sum += rows.SharesOf(parcel)[i] * ShareByPaths(rows, ancestor, rows.ParentsOf(parcel)[i]);
        }

        return sum;
    }
}
