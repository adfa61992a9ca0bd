using Evengrist.Packing.Codes;

namespace Evengrist.Records.Packing;

/// <summary>How the mill numbers its pallets, kept by version; before there is one, none gets a number.</summary>
public static class KeepUnitNumbering
{
    private static readonly KeptTable<UnitNumbering> Kept = new(UnitNumbering.Kind, UnitNumbering.Code, UnitNumbering.None, UnitNumbering.TryRead, n => n.ToJson());

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (UnitNumbering Numbering, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, UnitNumbering numbering, string by) => Kept.Keep(mill, numbering, by);
}
