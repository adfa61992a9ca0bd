using Evengrist.Tempering;

namespace Evengrist.Records.Tempering;

/// <summary>The mill's own aims of tempering: kept by version, the newest is used; before there is one, the program's own.</summary>
public static class KeepTemperAims
{
    private static readonly KeptTable<TemperAims> Kept = new(TemperAimsJson.PaperKind, "wheat", TemperAims.Start, TemperAimsJson.TryRead, TemperAimsJson.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (TemperAims Aims, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, TemperAims aims, string by) => Kept.Keep(mill, aims, by);
}
