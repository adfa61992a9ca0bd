using Evengrist.Packing.Rework;

namespace Evengrist.Records.Packing.Rework;

/// <summary>What this mill lets happen with rework: kept by version; before there is one, the program's own.</summary>
public static class KeepReworkRules
{
    private static readonly KeptTable<ReworkRules> Kept = new(ReworkRules.Kind, "mill", ReworkRules.Start, ReworkRules.TryRead, ReworkRules.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (ReworkRules Rules, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, ReworkRules rules, string by) => Kept.Keep(mill, rules, by);
}
