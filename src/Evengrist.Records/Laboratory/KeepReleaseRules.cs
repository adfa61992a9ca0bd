using Evengrist.Laboratory.Lots;

namespace Evengrist.Records.Laboratory;

/// <summary>What makes a lot and who may release it: kept by version; before there is one, the program's own, by which nobody may.</summary>
public static class KeepReleaseRules
{
    private static readonly KeptTable<ReleaseRules> Kept = new(ReleaseRules.Kind, "mill", ReleaseRules.Start, ReleaseRules.TryRead, ReleaseRules.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (ReleaseRules Rules, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, ReleaseRules rules, string by) => Kept.Keep(mill, rules, by);
}
