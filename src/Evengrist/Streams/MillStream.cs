namespace Evengrist.Streams;

/// <summary>A flour stream of a mill as surveyed.</summary>
/// <param name="Code">What the mill calls it: 1M, 2B.</param>
/// <param name="Yield">How much of it there is, per cent of one and the same wheat for all streams, above 0.</param>
/// <param name="AshPercent">Ash, per cent, on the table's basis.</param>
public sealed record MillStream(string Code, double Yield, double AshPercent)
{
    /// <summary>Protein, per cent, on the table's basis; null where it was not read.</summary>
    public double? ProteinPercent { get; init; }

    /// <summary>Falling number, seconds, as reported; null where it was not read.</summary>
    public double? FallingNumberSeconds { get; init; }

    /// <summary>Damaged starch, per cent by the mill's own method, the same for all streams; null where it was not read.</summary>
    public double? StarchDamagePercent { get; init; }
}
