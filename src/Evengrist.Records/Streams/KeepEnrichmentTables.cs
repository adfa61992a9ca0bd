using Evengrist.Streams.Additions;

namespace Evengrist.Records.Streams;

/// <summary>The mill's own enrichment tables: kept by version, the newest is used; before there is one, the program's own.</summary>
public static class KeepEnrichmentTables
{
    private static readonly KeptTable<EnrichmentTables> Kept = new(EnrichmentTables.Kind, "flour", EnrichmentTables.Start, EnrichmentTables.TryRead, EnrichmentTables.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (EnrichmentTables Tables, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, EnrichmentTables tables, string by) => Kept.Keep(mill, tables, by);
}
