using Evengrist.Laboratory.Bake;

namespace Evengrist.Records.Laboratory;

/// <summary>The laboratory's own bake formula: kept by version, the newest is used; before there is one, the program's own.</summary>
public static class KeepBakeFormula
{
    private static readonly KeptTable<BakeFormula> Kept = new(BakeFormula.PaperKind, "formula", BakeFormula.Start, BakeFormula.TryRead, BakeFormula.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (BakeFormula Formula, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, BakeFormula formula, string by) => Kept.Keep(mill, formula, by);
}
