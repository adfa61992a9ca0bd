using Evengrist.Laboratory.Methods;

namespace Evengrist.Records.Laboratory;

/// <summary>The laboratory's own methods: kept by version, the newest is used; before there is one, the program's own.</summary>
public static class KeepLabMethods
{
    private static readonly KeptTable<LabMethods> Kept = new(LabMethodsJson.PaperKind, "methods", LabMethods.Start, LabMethodsJson.TryRead, LabMethodsJson.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (LabMethods Methods, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, LabMethods methods, string by) => Kept.Keep(mill, methods, by);
}
