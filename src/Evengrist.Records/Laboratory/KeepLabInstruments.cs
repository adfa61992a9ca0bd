using Evengrist.Laboratory.Methods;

namespace Evengrist.Records.Laboratory;

/// <summary>The laboratory's instruments: kept by version, the newest is used; before there is one, none.</summary>
public static class KeepLabInstruments
{
    private static readonly KeptTable<LabInstruments> Kept = new(LabInstrumentsJson.PaperKind, "instruments", LabInstruments.Start, LabInstrumentsJson.TryRead, LabInstrumentsJson.Write);

    /// <inheritdoc cref="KeptTable{T}.Newest"/>
    public static (LabInstruments Instruments, int Version, string By) Newest(Mill mill) => Kept.Newest(mill);

    /// <inheritdoc cref="KeptTable{T}.Keep"/>
    public static int Keep(Mill mill, LabInstruments instruments, string by) => Kept.Keep(mill, instruments, by);
}
