namespace Evengrist.Quantities.Lists;

/// <summary>A column of a list that is taken out.</summary>
/// <param name="Heading">What stands in it, in words; no other column of the list has the same.</param>
/// <param name="Type">What sort of value.</param>
/// <param name="Unit">Its unit; null where it has none, or where a column beside it states one for each row.</param>
/// <param name="Basis">Its basis: <c>as it lies</c>, <c>dry matter</c>; empty where it needs none.</param>
/// <param name="Origin">Where the values come from.</param>
public sealed record ListColumn(string Heading, ListType Type, ListUnit? Unit = null, string Basis = "", ListOrigin Origin = ListOrigin.Stated)
{
    /// <summary>The heading with basis, seen or reckoned, and unit with its code: <c>mass as it lies, seen [kg = KGM]</c>.</summary>
    public string Head => Heading + (Basis.Length > 0 ? " " + Basis : "") + (Origin switch { ListOrigin.Seen => ", seen", ListOrigin.Reckoned => ", reckoned", _ => "" })
        + (Unit is { } unit ? $" [{unit.Symbol}{(unit.Code.Length > 0 ? " = " + unit.Code : "")}]" : "");
}
