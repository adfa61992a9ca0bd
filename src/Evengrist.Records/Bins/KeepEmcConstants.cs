using Evengrist.Bins.Storage;

namespace Evengrist.Records.Bins;

/// <summary>The mill's own table of equilibrium constants: kept by version, the newest is used; before there is one, the program's own.</summary>
public static class KeepEmcConstants
{
    private static readonly KeptTable<EmcTable> Kept = new(EmcJson.PaperKind, "wheat", EmcTable.Start, EmcJson.TryRead, EmcJson.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (EmcTable Table, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, EmcTable table, string by) => Kept.Keep(mill, table, by);
}
