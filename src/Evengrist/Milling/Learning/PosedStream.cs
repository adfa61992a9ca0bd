namespace Evengrist.Milling.Learning;

/// <summary>A stream of a survey as a person gives it, ash and protein on a basis given beside it.</summary>
/// <param name="Product">Code on the flow sheet.</param>
/// <param name="YieldPercent">Share of the wheat to first break as both flow, per cent.</param>
public sealed record PosedStream(string Product, double YieldPercent)
{
    /// <summary>Ash, per cent; null where it was not read.</summary>
    public double? AshPercent { get; init; }

    /// <summary>Protein, per cent; null where it was not read.</summary>
    public double? ProteinPercent { get; init; }
}
