using Evengrist.Packing.Lines;

namespace Evengrist.Records.Packing;

/// <summary>What the mill means to make in the coming days: kept by version, the newest is used; before there is one, nothing flows into the bins of a plan.</summary>
public static class KeepMillCampaigns
{
    private static readonly KeptTable<MillCampaigns> Kept = new(MillCampaigns.PaperKind, "mill", MillCampaigns.Start, MillCampaigns.TryRead, MillCampaigns.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (MillCampaigns Campaigns, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, MillCampaigns campaigns, string by) => Kept.Keep(mill, campaigns, by);

    /// <inheritdoc cref="KeptTable{T}.KeepAfter"/>
    public static IReadOnlyList<string> KeepAfter(Mill mill, MillCampaigns campaigns, string by, int after) => Kept.KeepAfter(mill, campaigns, by, after);

    /// <inheritdoc cref="KeptTable{T}.Versions"/>
    public static IReadOnlyList<(MillCampaigns Value, Paper Paper)> Versions(Mill mill) => Kept.Versions(mill);
}
