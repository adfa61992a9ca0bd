using Evengrist.Laboratory.Samples;

namespace Evengrist.Records.Laboratory;

/// <summary>The laboratory's sampling plan: kept by version, the newest is used; before there is one, none.</summary>
public static class KeepLabPlan
{
    private static readonly KeptTable<LabPlan> Kept = new(LabPlanJson.PaperKind, "plan", LabPlan.Start, LabPlanJson.TryRead, LabPlanJson.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (LabPlan Plan, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, LabPlan plan, string by) => Kept.Keep(mill, plan, by);
}
