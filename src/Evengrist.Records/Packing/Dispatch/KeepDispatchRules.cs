using Evengrist.Packing.Dispatch;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>How this mill sends flour out: kept by version; before there is one, the program's own.</summary>
public static class KeepDispatchRules
{
    private static readonly KeptTable<DispatchRules> Kept = new(DispatchRules.Kind, "mill", DispatchRules.Start, DispatchRules.TryRead, DispatchRules.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (DispatchRules Rules, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, DispatchRules rules, string by) => Kept.Keep(mill, rules, by);
}
