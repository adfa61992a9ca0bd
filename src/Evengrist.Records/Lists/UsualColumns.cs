using Evengrist.Quantities;
using Evengrist.Quantities.Lists;

namespace Evengrist.Records.Lists;

/// <summary>Columns that many lists have, spelled once.</summary>
internal static class UsualColumns
{
    /// <summary>A unit that differs from row to row, with its code of UN/ECE Recommendation 20 beside it.</summary>
    public static ListOf<T> Unit<T>(this ListOf<T> list, Func<T, string?> unit) => list.Text("unit", unit).Text("UN/ECE code of the unit", r => unit(r) is { } symbol ? ListUnit.Of(symbol).Code : "");

    /// <summary>A basis that differs from row to row; empty where none is stated.</summary>
    public static ListOf<T> Basis<T>(this ListOf<T> list, Func<T, Basis?> basis) => list.Text("basis", r => basis(r) is { IsStated: true } stated ? stated.ToString() : "");

    /// <summary>A unit and a basis that differ from row to row.</summary>
    public static ListOf<T> UnitAndBasis<T>(this ListOf<T> list, Func<T, string?> unit, Func<T, Basis?> basis) => list.Unit(unit).Basis(basis);

    /// <summary>Which version of a table it stands in, and who kept that; 0 and nobody for the one the program begins with.</summary>
    public static ListOf<T> Kept<T>(this ListOf<T> list, Func<T, int> version, Func<T, string?> by) => list.Whole("version, 0 for the program's own", r => version(r)).Text("kept by", by);

    /// <summary>A number of a model as a stated one; null where it is none that can be written.</summary>
    public static decimal? Exact(double? value) => value is { } number && Math.Abs(number) < 1e15 ? (decimal)number : null;
}
