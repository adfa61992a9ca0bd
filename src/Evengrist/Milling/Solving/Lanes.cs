using System.Numerics;
using System.Runtime.InteropServices;

namespace Evengrist.Milling.Solving;

/// <summary>Sums and products of rows of numbers, several at a time as the processor has room.</summary>
internal static class Lanes
{
    /// <summary>to += factor · row.</summary>
    public static void Add(Span<double> to, ReadOnlySpan<double> row, double factor)
    {
        var wide = MemoryMarshal.Cast<double, Vector<double>>(to[..row.Length]);
        var lanes = MemoryMarshal.Cast<double, Vector<double>>(row);
        for (var i = 0; i < lanes.Length; i++)
        {
            wide[i] += lanes[i] * factor;
        }

        for (var i = lanes.Length * Vector<double>.Count; i < row.Length; i++)
        {
            to[i] += row[i] * factor;
        }
    }

    /// <summary>taken = share · stock; stock −= taken.</summary>
    public static void Take(Span<double> stock, ReadOnlySpan<double> share, Span<double> taken)
    {
        var wide = MemoryMarshal.Cast<double, Vector<double>>(stock);
        var shares = MemoryMarshal.Cast<double, Vector<double>>(share);
        var takes = MemoryMarshal.Cast<double, Vector<double>>(taken);
        for (var i = 0; i < wide.Length; i++)
        {
            takes[i] = shares[i] * wide[i];
            wide[i] -= takes[i];
        }

        for (var i = wide.Length * Vector<double>.Count; i < stock.Length; i++)
        {
            taken[i] = share[i] * stock[i];
            stock[i] -= taken[i];
        }
    }

    /// <summary>shares = most · odds·ease / (1 + odds·ease).</summary>
    public static void Shares(ReadOnlySpan<double> odds, double ease, double most, Span<double> shares)
    {
        var from = MemoryMarshal.Cast<double, Vector<double>>(odds);
        var to = MemoryMarshal.Cast<double, Vector<double>>(shares);
        for (var i = 0; i < from.Length; i++)
        {
            var odd = from[i] * ease;
            to[i] = odd * most / (Vector<double>.One + odd);
        }

        for (var i = from.Length * Vector<double>.Count; i < odds.Length; i++)
        {
            shares[i] = most * odds[i] * ease / (1 + (odds[i] * ease));
        }
    }

    /// <summary>mixed = piece + clings · (flake − piece).</summary>
    public static void Mix(ReadOnlySpan<double> piece, ReadOnlySpan<double> flake, ReadOnlySpan<double> clings, Span<double> mixed)
    {
        for (var i = 0; i < piece.Length; i++)
        {
            mixed[i] = piece[i] + (clings[i] * (flake[i] - piece[i]));
        }
    }

    /// <summary>stock += share · (other − stock).</summary>
    public static void Toward(Span<double> stock, ReadOnlySpan<double> other, ReadOnlySpan<double> share)
    {
        var wide = MemoryMarshal.Cast<double, Vector<double>>(stock);
        var others = MemoryMarshal.Cast<double, Vector<double>>(other);
        var shares = MemoryMarshal.Cast<double, Vector<double>>(share);
        for (var i = 0; i < wide.Length; i++)
        {
            wide[i] += shares[i] * (others[i] - wide[i]);
        }

        for (var i = wide.Length * Vector<double>.Count; i < stock.Length; i++)
        {
            stock[i] += share[i] * (other[i] - stock[i]);
        }
    }

    /// <summary>Sum of the products of two rows, as long as the first. Rows of size classes are short: number by number is quicker here.</summary>
    public static double Dot(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        var sum = 0.0;
        for (var i = 0; i < one.Length; i++)
        {
            sum += one[i] * other[i];
        }

        return sum;
    }

    /// <summary>Sum of a row.</summary>
    public static double Sum(ReadOnlySpan<double> row)
    {
        var (lanes, sum) = (Vector<double>.Zero, 0.0);
        foreach (var wide in MemoryMarshal.Cast<double, Vector<double>>(row))
        {
            lanes += wide;
        }

        for (var i = row.Length / Vector<double>.Count * Vector<double>.Count; i < row.Length; i++)
        {
            sum += row[i];
        }

        return sum + Vector.Sum(lanes);
    }
}
